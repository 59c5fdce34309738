import { distance } from '../../../core/geometry/vec.ts';
import {
  isOpenQuad,
  type PatchCorners,
  type PicturePlace,
  type PictureQuad,
  patchCorners,
  quadOfRectangle,
  surfacePlace,
} from '../../../core/readings/patch-corners.ts';
import type { Patch } from '../../../core/setup/schema/setup.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import type { World } from '../../../core/world/world.ts';

type Seen = Pick<World, 'stage' | 'view'>;

const mapQuad = (quad: PictureQuad, change: (place: PicturePlace) => PicturePlace): PictureQuad =>
  quad.map(change) as unknown as PictureQuad;

/** Lowest and highest of a quad's places along an axis. */
const extentOf = (quad: PictureQuad, axis: 0 | 1): readonly [low: number, high: number] => {
  const values = quad.map((place) => place[axis]);
  return [Math.min(...values), Math.max(...values)];
};

/** A quad carried along, its middle kept in the picture. */
export const movedQuad = (quad: PictureQuad, dx: number, dy: number): PictureQuad => {
  const held = (axis: 0 | 1, way: number) => {
    const [low, high] = extentOf(quad, axis);
    const middle = (low + high) / 2;
    return Math.min(Math.max(middle + way, 0), 1) - middle;
  };
  const [right, down] = [held(0, dx), held(1, dy)];
  return mapQuad(quad, ([x, y]) => [x + right, y + down]);
};

/** Narrowest and lowest that a quad is made by keys, as a share of the picture. */
const leastExtent = 0.02;

/** A quad made wider and taller about its middle. */
export const resizedQuad = (quad: PictureQuad, wider: number, taller: number): PictureQuad => {
  const along = (axis: 0 | 1, more: number) => {
    const [low, high] = extentOf(quad, axis);
    const stretch = Math.max(high - low + more, leastExtent) / (high - low);
    return (v: number) => (low + high) / 2 + (v - (low + high) / 2) * stretch;
  };
  const [across, down] = [along(0, wider), along(1, taller)];
  return mapQuad(quad, ([x, y]) => [across(x), down(y)]);
};

const arrows: Readonly<Record<string, PicturePlace>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** How far an arrow key goes: 1 % of the picture, with Shift 5 %; null for other keys. */
export const arrowStep = ({ key, shiftKey }: { key: string; shiftKey: boolean }): PicturePlace | null => {
  const arrow = arrows[key];
  const share = shiftKey ? 0.05 : 0.01;
  return arrow ? [arrow[0] * share, arrow[1] * share] : null;
};

export const worldCorners = ({ corners }: Patch): PatchCorners =>
  corners.map(worldFromDocument) as unknown as PatchCorners;

const documentCorners = (corners: PatchCorners): Patch['corners'] =>
  corners.map(documentFromWorld) as unknown as Patch['corners'];

/** The whole patch set anew behind a quad; null where that can’t be: a corner in the sky, or a fold. */
export const patchBehind = ({ stage, view }: Seen, quad: PictureQuad): Patch['corners'] | null => {
  const corners = isOpenQuad(quad) ? patchCorners(stage, view, quad) : null;
  return corners && documentCorners(corners);
};

/** One corner set anew, the others kept as they are in the scene; null where that can’t be. */
export const cornerBehind = (
  { stage, view }: Seen,
  patch: Patch,
  quad: PictureQuad,
  corner: number,
  place: PicturePlace,
): Patch['corners'] | null => {
  const found = isOpenQuad(quad.with(corner, place) as unknown as PictureQuad)
    ? surfacePlace(stage, view, place)
    : null;
  return found && documentCorners(worldCorners(patch).with(corner, found) as unknown as PatchCorners);
};

/** Farthest corner over nearest: more, and a first patch runs off to the horizon. */
const mostSpread = 6;

/** Heights to try, as shares of the picture: near the horizon only a low one is of a piece. */
const firstHeights = [1 / 3, 1 / 4, 1 / 6];

/** A patch to begin with: the middle third of the picture, or as little below it as there is ground or wall behind it. */
export const firstPatch = ({ stage, view }: Seen): Patch['corners'] | null => {
  for (const height of firstHeights)
    for (let top = 1 / 3; top + height <= 1; top += 0.04) {
      const corners = patchCorners(stage, view, quadOfRectangle(1 / 3, top, 2 / 3, top + height));
      const away = corners?.map((corner) => distance(corner, view.position));
      if (corners && away && Math.max(...away) < mostSpread * Math.min(...away)) return documentCorners(corners);
    }
  return null;
};
