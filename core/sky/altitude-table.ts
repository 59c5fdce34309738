import type { Triple } from '../colour/matrix.ts';

/** Three numbers to add to. */
export type Sum = [number, number, number];

const steps = 512;

/**
 * A triple that depends on height alone, kept in a table and read between its rows in a straight line. Rows lie close
 * together at the horizon (evenly in the root of the sine), where air changes most. Below the horizon: the value there.
 *
 * @returns writes the value at a sine of height into `out`
 */
export const altitudeTable = (at: (sinAltitude: number) => Triple): ((sinAltitude: number, out: Sum) => void) => {
  const rows = new Float64Array(3 * (steps + 2));
  for (let i = 0; i <= steps + 1; i++) rows.set(at(Math.min((i / steps) ** 2, 1)), 3 * i);
  return (sinAltitude, out) => {
    const place = steps * Math.sqrt(Math.min(Math.max(sinAltitude, 0), 1));
    const i = Math.floor(place);
    const t = place - i;
    const k = 3 * i;
    out[0] = (rows[k] as number) * (1 - t) + (rows[k + 3] as number) * t;
    out[1] = (rows[k + 1] as number) * (1 - t) + (rows[k + 4] as number) * t;
    out[2] = (rows[k + 2] as number) * (1 - t) + (rows[k + 5] as number) * t;
  };
};
