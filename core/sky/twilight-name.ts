import { degreesFromRadians } from '../units/angle.ts';

/** What the sun's height makes of the hour. */
export type TwilightName = 'day' | 'civil twilight' | 'nautical twilight' | 'astronomical twilight' | 'dark';

/** Name of the light of an hour by the sun's true height. Limits of -0.833, -6, -12 and -18 degrees: the usual definitions. */
export const twilightName = (sunAltitudeRadians: number): TwilightName => {
  const degrees = degreesFromRadians(sunAltitudeRadians);
  if (degrees > -0.833) return 'day';
  if (degrees > -6) return 'civil twilight';
  if (degrees > -12) return 'nautical twilight';
  return degrees > -18 ? 'astronomical twilight' : 'dark';
};
