import { isInFrame, projectPoint } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { add, distance, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { bodyOutline, isInTheWay } from '../walk/body.ts';
import { feetOf } from '../world/holder.ts';
import { placeAtShare, type Source, type World } from '../world/world.ts';

export type LampSource = Extract<Source, { kind: 'lamp' }>;

/** Side of the squares that a body is cut into, metres. */
const cellMetres = 0.125;
/** Rays end this share short of what they look at. */
export const reach = 1 - 1e-4;
const farMetres = 1e4;

/** A body at a moment: where it stands, and the middles of the squares of it that the lens sees. */
export interface SeenBody {
  readonly feet: Vec3;
  readonly across: Vec3;
  readonly cells: readonly Vec3[];
}

export const seenBody = ({ stage, view }: World, source: LampSource, share: number): SeenBody => {
  const feet = feetOf(stage, placeAtShare(source, share));
  const eye = view.position;
  const { cells, across } = bodyOutline(feet, eye, cellMetres);
  const isSeen = (cell: Vec3) =>
    isInFrame(view, cell) && !anyHit(stage.tree, eye, normalize(sub(cell, eye)), distance(cell, eye) * reach);
  return { feet, across, cells: cells.filter(isSeen) };
};

/** Share of the picture that a square of a body covers. */
export const pictureShare = ({ view }: World, cell: Vec3, across: Vec3): number => {
  const places = [cell, add(cell, scale(across, cellMetres)), add(cell, [0, cellMetres, 0])].map((p) =>
    projectPoint(view, p),
  );
  const [at, aside, over] = places;
  if (!at || !aside || !over) return 0;
  return Math.abs((aside[0] - at[0]) * (over[1] - at[1]) - (over[0] - at[0]) * (aside[1] - at[1]));
};

/** Most of the moments at which bodies cover one and the same place of the picture. */
export const mostAtOnePlace = (eye: Vec3, bodies: readonly SeenBody[]): number => {
  let most = 0;
  for (const { cells } of bodies)
    for (let c = 0; c < cells.length; c += 4) {
      const far = add(eye, scale(normalize(sub(cells[c] as Vec3, eye)), farMetres));
      most = Math.max(most, bodies.filter(({ feet, cells }) => cells.length > 0 && isInTheWay(feet, eye, far)).length);
    }
  return most;
};
