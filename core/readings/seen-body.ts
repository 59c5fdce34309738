import { isInFrame, projectPoint } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { add, distance, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { bodyOutline, isInTheWay } from '../walk/body.ts';
import { feetOf } from '../world/holder.ts';
import { placeAtShare, type Source, type World } from '../world/world.ts';

export type LampSource = Extract<Source, { kind: 'lamp' }>;

/** Sides of the squares that a body is cut into, metres: finer near the lens, as a share of the way to it. */
const cells = { finest: 0.02, coarsest: 0.125, perMetre: 0.04 } as const;
/** So near the lens a body that stands before the middle of the picture hides nearly all of it, metres. */
const atLensMetres = 0.3;
/** Rays end this share short of what they look at. */
export const reach = 1 - 1e-4;
const farMetres = 1e4;

/** A body at a moment: where it stands, and the middles of the squares of it that the lens sees. */
export interface SeenBody {
  readonly feet: Vec3;
  readonly across: Vec3;
  readonly cells: readonly Vec3[];
  /** Sides of a square across and up, metres. */
  readonly cellSides: readonly [number, number];
  /** Whether it stands right before the lens, or in its place. */
  readonly isAtLens: boolean;
}

export const seenBody = ({ stage, view }: World, source: LampSource, share: number): SeenBody => {
  const feet = feetOf(stage, placeAtShare(source, share));
  const eye = view.position;
  const away = Math.hypot(feet[0] - eye[0], feet[2] - eye[2]);
  const cellMetres = Math.min(Math.max(cells.perMetre * away, cells.finest), cells.coarsest);
  const { cells: outline, ...cut } = bodyOutline(feet, eye, cellMetres);
  const isAtLens = isInTheWay(feet, eye, add(eye, scale(view.forward, atLensMetres)));
  const sees = (cell: Vec3) =>
    isInFrame(view, cell) && !anyHit(stage.tree, eye, normalize(sub(cell, eye)), distance(cell, eye) * reach);
  return { feet, cells: outline.filter(sees), ...cut, isAtLens };
};

/** Share of the picture that a square of a body covers. */
const squareShare = ({ view }: World, cell: Vec3, { across, cellSides: [wide, tall] }: SeenBody): number => {
  const places = [cell, add(cell, scale(across, wide)), add(cell, [0, tall, 0])].map((p) => projectPoint(view, p));
  const [at, aside, over] = places;
  if (!at || !aside || !over) return 0;
  return Math.abs((aside[0] - at[0]) * (over[1] - at[1]) - (over[0] - at[0]) * (aside[1] - at[1]));
};

/** Share of the picture that is seen of a body, 0 to 1. */
export const pictureShare = (world: World, body: SeenBody): number =>
  body.isAtLens
    ? 1
    : Math.min(
        1,
        body.cells.reduce((sum, cell) => sum + squareShare(world, cell, body), 0),
      );

/** Whether the lens sees anything of a body. */
export const isSeen = ({ cells, isAtLens }: SeenBody): boolean => isAtLens || cells.length > 0;

/** Most of the moments at which bodies cover one and the same place of the picture. */
export const mostAtOnePlace = (eye: Vec3, bodies: readonly SeenBody[]): number => {
  let most = bodies.filter(({ isAtLens }) => isAtLens).length;
  for (const { cells } of bodies)
    for (let c = 0; c < cells.length; c += 4) {
      const far = add(eye, scale(normalize(sub(cells[c] as Vec3, eye)), farMetres));
      const covers = (body: SeenBody) => body.isAtLens || (body.cells.length > 0 && isInTheWay(body.feet, eye, far));
      most = Math.max(most, bodies.filter(covers).length);
    }
  return most;
};
