import { type Uv, uvFromChromaticity } from './chromaticity.ts';
import { kelvinFromMired, miredFromKelvin } from './mired.ts';
import { planckChromaticity } from './planck-locus.ts';

/** Half the chord along which the direction of the locus is taken: short against its bends, long against rounding. */
const halfChordMired = 0.1;

/**
 * Unit vector in CIE 1960 uv that stands square on the Planck locus at a temperature and points to its green side, the
 * side on which Duv counts as positive. Valid from 1000 to 100 000 K; direction good to 1e-6 rad.
 */
export const planckGreenNormal = (temperatureKelvin: number): Uv => {
  const mired = miredFromKelvin(temperatureKelvin);
  const [u0, v0] = uvFromChromaticity(planckChromaticity(kelvinFromMired(mired - halfChordMired)));
  const [u1, v1] = uvFromChromaticity(planckChromaticity(kelvinFromMired(mired + halfChordMired)));
  const length = Math.hypot(u1 - u0, v1 - v0);
  // with rising mired the locus runs toward greater u, so a quarter turn to the left of it is green
  return [(v0 - v1) / length, (u1 - u0) / length];
};
