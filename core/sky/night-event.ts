import { radiansFromDegrees } from '../units/angle.ts';
import type { SkyBody } from './sky-state.ts';

/** Something that happens in the sky: when, and where it stands then. */
export interface SkyEvent {
  readonly utcMilliseconds: number;
  /** True height, without refraction: a rising edge of a disc is under 0. */
  readonly altitudeRadians: number;
  readonly bearingRadians: number;
}

/** Height of a star, and of the edge of a disc, that refraction lifts to a level horizon: 34 minutes of arc, as almanacs take it. */
export const horizonRadians = radiansFromDegrees(-34 / 60);
/** Half the sun's disc, 16 minutes of arc, as almanacs take it for rise and set. */
export const sunRadiusRadians = radiansFromDegrees(16 / 60);
/** The sun's height under which the sky is as dark as the site lets it be: end of astronomical twilight. */
export const darkSunRadians = radiansFromDegrees(-18);

/** What a body does at an instant. */
export const eventOf = (sight: (milliseconds: number) => SkyBody, utcMilliseconds: number): SkyEvent => {
  const { altitudeRadians, bearingRadians } = sight(utcMilliseconds);
  return { utcMilliseconds, altitudeRadians, bearingRadians };
};
