import type { Vec3 } from '../geometry/vec.ts';

/**
 * The dome is cut into cells of the same solid angle: columns by bearing in the scene, from its north through its east;
 * rows by the sine of the altitude, from the horizon up. Cell number = row times `domeSteps` plus column.
 */
export const domeSteps = 64;
export const cells = domeSteps * domeSteps;
export const cellSteradians = (2 * Math.PI) / cells;

/** Unit direction from bearing in the scene and sine of altitude. */
const direction = (bearingRadians: number, sine: number): Vec3 => {
  const level = Math.sqrt(Math.max(1 - sine * sine, 0));
  return [level * Math.sin(bearingRadians), sine, -level * Math.cos(bearingRadians)];
};

/** A direction in a cell; `across` and `up` from 0 to 1. */
export const directionInCell = (cell: number, across: number, up: number): Vec3 =>
  direction((((cell % domeSteps) + across) / domeSteps) * 2 * Math.PI, (Math.floor(cell / domeSteps) + up) / domeSteps);

/** Where a direction falls: column and row with what is past their edges, 0 to `domeSteps`. */
export const cellOf = ([x, y, z]: Vec3): { column: number; row: number } => {
  const turn = Math.atan2(x, -z) / (2 * Math.PI);
  return { column: (turn < 0 ? turn + 1 : turn) * domeSteps, row: Math.min(Math.max(y, 0), 1) * domeSteps };
};
