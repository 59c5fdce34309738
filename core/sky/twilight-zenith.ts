import { degreesFromRadians } from '../units/angle.ts';
import { luminanceFromSurfaceMagnitude } from './magnitudes.ts';
import { twilightAloneIlluminance, twilightEndsDegrees } from './twilight-illuminance.ts';

/**
 * Brightness straight up in twilight, V in mag/arcsec2, night's own part included: 13.30 at a sun of -6 degrees, 19.67 at
 * -12. Valid for a sun of -5 to -15 degrees. Source: Patat et al. 2006, A&A 455, 385.
 */
export const patatZenithMagnitude = (sunAltitudeRadians: number): number => {
  const x = -degreesFromRadians(sunAltitudeRadians) - 5;
  return 11.84 + 1.518 * x - 0.057 * x * x;
};

/** What a dark zenith at the observatory of that paper has, cd/m2: 21.9 mag/arcsec2. It is in the fit, so it is taken off. */
const nightAtZenith = luminanceFromSurfaceMagnitude(21.9);

const radians = Math.PI / 180;
const brightest = -5 * radians;
const darkest = -15 * radians;

const within = (sunAltitudeRadians: number): number =>
  luminanceFromSurfaceMagnitude(patatZenithMagnitude(sunAltitudeRadians)) - nightAtZenith;

/**
 * Luminance that twilight alone adds straight up, cd/m2. By Patat's fit from -5 to -15 degrees; with a higher sun it keeps
 * its share of the light on level ground, and with a lower one it falls with that light: both our choice. 0 under -21.
 */
export const twilightZenithLuminance = (sunAltitudeRadians: number): number => {
  if (degreesFromRadians(sunAltitudeRadians) <= twilightEndsDegrees) return 0;
  const at = Math.min(Math.max(sunAltitudeRadians, darkest), brightest);
  return (within(at) * twilightAloneIlluminance(sunAltitudeRadians)) / twilightAloneIlluminance(at);
};
