import { apply, type Matrix3 } from '../../../core/colour/matrix.ts';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';

/**
 * The sky from above, as it lies on the ground plan: the horizon is a circle of radius 1, straight up is the middle, and
 * heights go evenly between. What is below the horizon lies outside of the circle.
 *
 * @param up level unit direction that is up on the drawing, [east, north] of the scene
 * @param toward unit direction in world axes (x east, y up, z south)
 */
export const wheelPoint = (up: GroundPoint, toward: Vec3): GroundPoint => {
  const [x, y, z] = toward;
  const level = Math.hypot(x, z);
  if (level < 1e-9) return [0, 0];
  const r = 1 - Math.atan2(y, level) / (Math.PI / 2);
  const [e, n] = [(x / level) * r, (-z / level) * r];
  return [e * up[1] - n * up[0], -(e * up[0] + n * up[1])];
};

/** Level unit direction [east, north] of the scene for a true bearing. */
export const levelOfBearing = (bearingDegrees: number, northDegrees: number): GroundPoint => {
  const turn = ((bearingDegrees - northDegrees) * Math.PI) / 180;
  return [Math.sin(turn), Math.cos(turn)];
};

/** A level direction as it lies on a drawing. */
export const turnToDrawing = (up: GroundPoint, [e, n]: GroundPoint): GroundPoint => [
  e * up[1] - n * up[0],
  -(e * up[0] + n * up[1]),
];

/** Steps along the Milky Way's middle line. */
const bandSteps = 120;

/**
 * The middle line of the Milky Way where it is over the horizon, in pieces.
 *
 * @param worldFromGalactic x toward its centre, z toward its pole
 */
export const bandOverHorizon = (up: GroundPoint, worldFromGalactic: Matrix3): GroundPoint[][] => {
  const pieces: GroundPoint[][] = [];
  let isOver = false;
  // from its lowest point round, so that no piece is cut at the seam
  const [along, across] = [worldFromGalactic[1][0], worldFromGalactic[1][1]];
  const lowest = Math.atan2(-across, -along);
  for (let i = 0; i <= bandSteps; i++) {
    const l = lowest + (2 * Math.PI * i) / bandSteps;
    const toward = apply(worldFromGalactic, [Math.cos(l), Math.sin(l), 0]) as Vec3;
    if (toward[1] < 0) {
      isOver = false;
      continue;
    }
    if (!isOver) pieces.push([]);
    isOver = true;
    pieces.at(-1)?.push(wheelPoint(up, toward));
  }
  return pieces;
};

/** Where a level direction from the middle of a square drawing meets a square of half-side `half`. */
export const edgePoint = ([x, y]: GroundPoint, half: number): GroundPoint => {
  const most = Math.max(Math.abs(x), Math.abs(y), 1e-9);
  return [(x / most) * half, (y / most) * half];
};
