import type { GroundPoint } from '../geometry/hull.ts';

/** Numbers a corner has in `Corners.numbers`: its place, the corner before it and the one after, [east, north] each. */
const stride = 6;

/** Places where a way may start, turn and end, laid out flat: a search asks millions of times about them. */
export interface Corners {
  readonly count: number;
  readonly numbers: Float64Array;
}

/** @param rows of a place, the corner before it and the one after; a place that is no corner is its own neighbour */
export const cornersOf = (rows: readonly (readonly [GroundPoint, GroundPoint, GroundPoint])[]): Corners => ({
  count: rows.length,
  numbers: Float64Array.from(rows.flat(2)),
});

export const placeOf = ({ numbers }: Corners, corner: number): GroundPoint => [
  numbers[corner * stride] as number,
  numbers[corner * stride + 1] as number,
];

export const apart = ({ numbers }: Corners, a: number, b: number): number => {
  const east = (numbers[b * stride] as number) - (numbers[a * stride] as number);
  const north = (numbers[b * stride + 1] as number) - (numbers[a * stride + 1] as number);
  return Math.sqrt(east * east + north * north);
};

/** Rounding of the cross products below, m². */
const slack = 1e-9;

/**
 * Whether the line from a corner to another only touches the obstacle of the second: both its neighbours lie on one side.
 * A shortest way never turns anywhere else.
 */
export const touches = ({ numbers }: Corners, from: number, corner: number): boolean => {
  const j = corner * stride;
  const x = numbers[j] as number;
  const y = numbers[j + 1] as number;
  const alongEast = x - (numbers[from * stride] as number);
  const alongNorth = y - (numbers[from * stride + 1] as number);
  const before = alongEast * ((numbers[j + 3] as number) - y) - alongNorth * ((numbers[j + 2] as number) - x);
  const after = alongEast * ((numbers[j + 5] as number) - y) - alongNorth * ((numbers[j + 4] as number) - x);
  return (before >= -slack && after >= -slack) || (before <= slack && after <= slack);
};
