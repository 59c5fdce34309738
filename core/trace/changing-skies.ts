import { inputAfter } from '../sky/mid-exposure.ts';
import type { SeenSky } from '../sky/seen-sky.ts';
import { skyAt } from '../sky/sky-at.ts';
import type { SkyState } from '../sky/sky-state.ts';
import { radiansFromDegrees } from '../units/angle.ts';

/** Shorter exposures take the middle alone, and longer ones this many instants, each in the middle of its part. */
const longSeconds = 60;
const instants = 3;

/** Twilight changes while the sun is higher than that, moonlight while the moon is between these: it comes or goes. */
const twilightRadians = radiansFromDegrees(-18);
const [moonFromRadians, moonToRadians] = [radiansFromDegrees(-2), radiansFromDegrees(12)];

const isChanging = ({ sun, moon }: SkyState): boolean =>
  sun.altitudeRadians > twilightRadians ||
  (moon.altitudeRadians > moonFromRadians && moon.altitudeRadians < moonToRadians);

/**
 * Skies whose mean the smooth sky of an exposure is: that of its middle, or in dusk and dawn and at moonrise and moonset, if
 * it is long, several. With three the steepest dusk is right within 2 % for five minutes and within 6 % for ten.
 *
 * @param middle the sky at the middle of the exposure
 */
export const changingSkies = (middle: SkyState, { input, seconds }: SeenSky): readonly SkyState[] => {
  if (seconds <= longSeconds) return [middle];
  const skies = Array.from({ length: instants }, (_, i) => skyAt(inputAfter(input, (seconds * (i + 0.5)) / instants)));
  return skies.some(isChanging) ? skies : [middle];
};
