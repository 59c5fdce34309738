import { type Chromaticity, chromaticityFromXyz, xyzFromChromaticity } from './chromaticity.ts';
import { daylightChromaticity } from './daylight-locus.ts';
import { apply, type Triple } from './matrix.ts';
import { planckChromaticity } from './planck-locus.ts';
import { linearSrgbFromXyz } from './srgb.ts';

/** Up to the first a white is a black body, from the second on it is daylight. */
const planckUpToKelvin = 4000;
const daylightFromKelvin = 5000;

/**
 * Chromaticity that a lamp of a stated colour temperature has, and that a white balance of that temperature makes neutral:
 * black body up to 4000 K, daylight from 5000 K, and in between a mixture of both at equal luminance whose share goes
 * evenly with temperature, as with the reference illuminants of IES TM-30 (from memory).
 *
 * Lamps and white balance share it, so that light of 5600 K is neutral under a balance of 5600 K. Valid from 1667 to
 * 25 000 K, continuous throughout (its direction bends at both ends of the mixture). The correlated colour temperature of
 * the result is within 0.15 % of the temperature asked for up to 12 000 K, and within 0.4 % up to 25 000 K.
 */
export const whiteChromaticity = (temperatureKelvin: number): Chromaticity => {
  if (temperatureKelvin <= planckUpToKelvin) return planckChromaticity(temperatureKelvin);
  if (temperatureKelvin >= daylightFromKelvin) return daylightChromaticity(temperatureKelvin);
  const share = (temperatureKelvin - planckUpToKelvin) / (daylightFromKelvin - planckUpToKelvin);
  const [px, , pz] = xyzFromChromaticity(planckChromaticity(temperatureKelvin));
  const [dx, , dz] = xyzFromChromaticity(daylightChromaticity(temperatureKelvin));
  return chromaticityFromXyz([px + share * (dx - px), 1, pz + share * (dz - pz)]);
};

/** Light of the white locus in linear sRGB (D65 white, no adaptation), scaled to luminance 1. Blue is negative below 1901 K. */
export const whiteLinearSrgb = (temperatureKelvin: number): Triple =>
  apply(linearSrgbFromXyz, xyzFromChromaticity(whiteChromaticity(temperatureKelvin)));
