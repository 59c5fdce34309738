import { radiansFromDegrees } from '../units/angle.ts';

/**
 * Luminous intensity of a lamp over all directions, of type C: planes that share the lamp's axis. Made ready for use:
 * whatever symmetry the measurement had, the planes here go once round.
 */
export interface Distribution {
  /** Ascending. 0 is the axis of the light (straight down for a ceiling lamp), pi the opposite way. */
  readonly verticalRadians: Float64Array;
  /** Ascending from 0 to 2 pi, both included; counter-clockwise seen from above (from behind the light). */
  readonly horizontalRadians: Float64Array;
  /** Plane-major: plane h, vertical v at `h * verticalRadians.length + v`. The last plane equals the first. */
  readonly candela: Float64Array;
}

/** Measured candelas, one row for each horizontal angle, as in a photometric file. */
export interface MeasuredPlanes {
  readonly verticalDegrees: readonly number[];
  readonly horizontalDegrees: readonly number[];
  readonly candela: readonly (readonly number[])[];
}

type Row = readonly number[];

/**
 * Unfolds measured planes to the full circle. The horizontal angles must be one of these (LM-63, type C): a single 0
 * (rotational); 0 to 90 (quadrants alike); 0 to 180 (mirrored in the plane 0-180); 90 to 270 (mirrored in the plane
 * 90-270); 0 to more than 180 (as it is: a missing 360 is added). The plane 360 is the plane 0, also where a file gives
 * both with different values. Vertical angles are kept. Input is taken as valid: see `parseLm63`.
 */
export const distributionOf = ({ verticalDegrees, horizontalDegrees, candela }: MeasuredPlanes): Distribution => {
  const planes = unfolded(horizontalDegrees, candela);
  const angles = [...planes.keys()].sort((a, b) => a - b);
  const rows = angles.map((angle) => planes.get(angle) as Row);
  const zero = angles[0] === 0 ? (rows[0] as Row) : rowAtZero(angles, rows);
  if (angles[0] !== 0) {
    angles.unshift(0);
    rows.unshift(zero);
  }
  const values = new Float64Array((rows.length + 1) * verticalDegrees.length);
  for (const [plane, row] of [...rows, zero].entries()) values.set(row, plane * verticalDegrees.length);
  return {
    verticalRadians: Float64Array.from(verticalDegrees, radiansFromDegrees),
    horizontalRadians: Float64Array.from([...angles, 360], radiansFromDegrees),
    candela: values,
  };
};

/** All planes by their angle in [0, 360): those measured, and their mirror images. */
const unfolded = (angles: readonly number[], candela: readonly Row[]): Map<number, Row> => {
  const planes = new Map<number, Row>();
  const put = (angle: number, row: Row): void => {
    const wrapped = (angle < 0 ? angle + 360 : angle) % 360;
    if (!planes.has(wrapped)) planes.set(wrapped, row);
  };
  const [first, last] = [angles[0], angles.at(-1)];
  const across = first === 90 || last === 90;
  const along = first === 0 && (last === 90 || last === 180);
  for (const [h, row] of candela.entries()) put(angles[h] as number, row);
  if (across) for (const [angle, row] of [...planes]) put(180 - angle, row);
  if (along) for (const [angle, row] of [...planes]) put(360 - angle, row);
  return planes;
};

/** The plane 0 between the last and the first: only planes from 90 to 270 without one at 180 leave it open. */
const rowAtZero = (angles: readonly number[], rows: readonly Row[]): Row => {
  const [before, after] = [(angles.at(-1) as number) - 360, angles[0] as number];
  const share = -before / (after - before);
  const [a, b] = [rows.at(-1) as Row, rows[0] as Row];
  return a.map((value, v) => value * (1 - share) + (b[v] as number) * share);
};

/** Where an angle lies in an ascending list: interval from `index` to `index + 1`, and how far along it, 0 to 1. */
const placeIn = (angles: Float64Array, angle: number): { index: number; share: number } => {
  let [low, high] = [0, angles.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((angles[middle] as number) <= angle) low = middle;
    else high = middle;
  }
  const [from, to] = [angles[low] as number, angles[high] as number];
  return { index: low, share: to > from ? (angle - from) / (to - from) : 0 };
};

/**
 * Intensity in candela in a direction: a straight line in both angles between the four values round it.
 *
 * @param verticalRadians angle off the axis, 0 to pi; outside the measured range all is dark: 0
 * @param horizontalRadians round the axis; any value, wraps at 2 pi
 */
export const candelaAt = (
  { verticalRadians: verticals, horizontalRadians: horizontals, candela }: Distribution,
  verticalRadians: number,
  horizontalRadians: number,
): number => {
  const count = verticals.length;
  if (verticalRadians < (verticals[0] as number) || verticalRadians > (verticals[count - 1] as number)) return 0;
  const v = placeIn(verticals, verticalRadians);
  const circle = 2 * Math.PI;
  const h = placeIn(horizontals, horizontalRadians - circle * Math.floor(horizontalRadians / circle));
  const at = h.index * count + v.index;
  const inPlane = (k: number): number => (candela[k] as number) * (1 - v.share) + (candela[k + 1] as number) * v.share;
  return inPlane(at) * (1 - h.share) + inPlane(at + count) * h.share;
};

/**
 * Candelas of the half plane at an angle round the axis, one for each vertical angle: a straight line between the two
 * planes beside it.
 *
 * @param horizontalRadians any value, wraps at 2 pi
 */
export const planeAt = (
  { verticalRadians: { length }, horizontalRadians: horizontals, candela }: Distribution,
  horizontalRadians: number,
): Float64Array => {
  const circle = 2 * Math.PI;
  const { index, share } = placeIn(horizontals, horizontalRadians - circle * Math.floor(horizontalRadians / circle));
  const [one, other] = [index, index + 1].map((plane) => candela.subarray(plane * length, (plane + 1) * length));
  return share === 0
    ? (one as Float64Array)
    : (one as Float64Array).map((value, v) => value * (1 - share) + ((other as Float64Array)[v] as number) * share);
};

/** Highest intensity in candela. */
export const peakCandela = ({ candela }: Distribution): number =>
  candela.reduce((most, value) => Math.max(most, value), 0);
