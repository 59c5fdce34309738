import type { Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians, radiansFromDegrees } from '../units/angle.ts';

/** Lowest true height at which the formula still gives a lift, degrees. */
const lowestFormulaDegrees = -1;

/** Lift in degrees at a true height in degrees, -1 to 90. A hair over the zenith the formula turns negative: no lift. */
const formulaDegrees = (heightDegrees: number): number =>
  Math.max(0, 1.02 / 60 / Math.tan(radiansFromDegrees(heightDegrees + 10.3 / (heightDegrees + 5.11))));

/**
 * The height at which a body is seen, from where it is without air: lifted by refraction.
 *
 * At 1010 hPa and 10 degrees Celsius. Good to about a tenth of a minute of arc over 15 degrees; near the horizon the air
 * of the day changes it by several minutes. Below -1 degree, where nothing is seen, the lift of -1 degree fades evenly
 * to none at the nadir, so that a body never jumps.
 *
 * @param altitudeRadians true height over the horizon, -pi/2 to pi/2
 * @returns seen height in radians
 *
 * Source: Saemundsson, Sky and Telescope 72 (1986), 70, as in Meeus, Astronomical Algorithms, equation 16.4.
 */
export const refractedAltitude = (altitudeRadians: number): number => {
  const height = degreesFromRadians(altitudeRadians);
  const fade = height < lowestFormulaDegrees ? Math.max(0, (height + 90) / (lowestFormulaDegrees + 90)) : 1;
  return altitudeRadians + radiansFromDegrees(fade * formulaDegrees(Math.max(lowestFormulaDegrees, height)));
};

/**
 * Unit direction in which a body is seen, from the unit direction in which it is. World axes (y up); the bearing stays.
 * Straight up and straight down stay as they are.
 */
export const apparentDirection = (toward: Vec3): Vec3 => {
  const [x, y, z] = toward;
  const level = Math.hypot(x, z);
  if (level === 0) return toward;
  const seen = refractedAltitude(Math.atan2(y, level));
  const share = Math.cos(seen) / level;
  return [x * share, Math.sin(seen), z * share];
};
