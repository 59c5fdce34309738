import { type Chromaticity, type Uv, uvFromChromaticity } from './chromaticity.ts';
import { kelvinFromMired } from './mired.ts';
import { planckChromaticity } from './planck-locus.ts';
import { planckGreenNormal } from './planck-normal.ts';

/** Where a colour lies along the Planck locus, and how far off it. */
export interface CorrelatedColourTemperature {
  readonly temperatureKelvin: number;
  /** Distance from the locus in CIE 1960 uv: positive on its green side, negative on its magenta side. */
  readonly duv: number;
}

/** Farther off the locus than this a colour temperature means nothing (CIE 15, from memory). */
const duvLimit = 0.05;
const rangeMired = { min: 10, max: 1000 } as const;
/** Rounding that a colour at an end of the range is allowed. */
const slackMired = 1e-4;

const uvAtMired = (mired: number): Uv => uvFromChromaticity(planckChromaticity(kelvinFromMired(mired)));

const gridStepMired = 10;
/** Locus to start the search from; one step more than the range on either side. */
const grid = Array.from({ length: rangeMired.max / gridStepMired + 2 }, (_, i) => {
  const mired = 1 + i * gridStepMired;
  return { mired, uv: uvAtMired(mired) };
});

/** Offset of the lowest point of a parabola through values at -1, 0 and 1, held between -1 and 1. */
const vertex = (before: number, here: number, after: number): number => {
  const offset = (0.5 * (before - after)) / (before - 2 * here + after);
  return Math.min(Math.max(offset, -1), 1);
};

/**
 * Correlated colour temperature and Duv: the nearest point of the Planck locus in CIE 1960 uv (CIE 15).
 *
 * Finds the nearest of a grid of 10 mired, then the lowest point of parabolas through ever closer neighbours; good to
 * 1e-4 mired. Null where a colour temperature has no meaning: |Duv| above 0.05, outside 1000 to 100 000 K, or no colour at
 * all (not finite).
 */
export const correlatedColourTemperature = (chromaticity: Chromaticity): CorrelatedColourTemperature | null => {
  const [u, v] = uvFromChromaticity(chromaticity);
  const squareTo = ([pu, pv]: Uv) => (u - pu) ** 2 + (v - pv) ** 2;
  let mired = Number.NaN;
  let least = Number.POSITIVE_INFINITY;
  for (const point of grid) {
    const square = squareTo(point.uv);
    if (square < least) [mired, least] = [point.mired, square];
  }
  if (!(Math.sqrt(least) <= duvLimit + 0.01)) return null;
  for (let step = gridStepMired / 2; step > 1e-3; step /= 8) {
    const at = (offset: number) => squareTo(uvAtMired(Math.max(mired + offset * step, 0.01)));
    mired += step * vertex(at(-1), at(0), at(1));
  }
  if (mired < rangeMired.min - slackMired || mired > rangeMired.max + slackMired) return null;

  const temperatureKelvin = kelvinFromMired(mired);
  const [nu, nv] = planckGreenNormal(temperatureKelvin);
  const [pu, pv] = uvAtMired(mired);
  const duv = (u - pu) * nu + (v - pv) * nv;
  return Math.abs(duv) <= duvLimit ? { temperatureKelvin, duv } : null;
};
