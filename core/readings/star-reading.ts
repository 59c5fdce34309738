import { pixelPitchMicrometres } from '../camera/sensors.ts';
import { type StarRule, starRules } from '../camera/star-rules.ts';
import { starSpeed } from '../camera/star-speed.ts';
import { trailPixels } from '../camera/star-trail.ts';
import { dot, type Vec3 } from '../geometry/vec.ts';
import type { Camera, Frame } from '../setup/schema/setup.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { exactFNumber, exactSeconds } from '../units/third-stops.ts';
import type { StarView } from './star-view.ts';

/** A trail as the lens draws it, projection included. */
export interface SeenTrail {
  readonly declinationDegrees: number;
  readonly trailPixels: number;
}

/** How stars come out in a frame, where they run fastest. */
export interface StarReading {
  /** Of the stars that the trail and the rules are about: the nearest to the celestial equator in the picture; 0 under a plain sky. */
  readonly declinationDegrees: number;
  /** Length of their trails as the middle of the picture would have them, in pixels. */
  readonly trailPixels: number;
  /** How long the usual rules would keep the shutter open, and what trail that gives. */
  readonly rules: readonly StarRule[];
  /** The trail in the very middle, and the longest, toward the corners; null under a plain sky and where no sky is seen. */
  readonly seen: { readonly middle: SeenTrail; readonly longest: SeenTrail } | null;
}

const declinationOf = (toward: Vec3, { pole }: StarView): number =>
  Math.asin(Math.min(Math.max(dot(toward, pole), -1), 1));

/** @param starView where the stars of the picture stand; null where that is not known: then they are taken at the equator */
export const starReading = (
  { focalLengthMm, sensor }: Camera,
  frame: Frame,
  starView: StarView | null = null,
): StarReading => {
  const pitchMicrometres = pixelPitchMicrometres(sensor);
  const seconds = exactSeconds(frame.seconds);
  const fastest = starView
    ? starView.sky
        .map((toward) => declinationOf(toward, starView))
        .reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a))
    : 0;
  const trailAt = (view: StarView, toward: Vec3): SeenTrail => ({
    declinationDegrees: degreesFromRadians(declinationOf(toward, view)),
    trailPixels: (starSpeed(view.view, toward, view.pole) * seconds * focalLengthMm * 1000) / pitchMicrometres,
  });
  return {
    declinationDegrees: degreesFromRadians(fastest),
    trailPixels: trailPixels(focalLengthMm, seconds, pitchMicrometres, fastest),
    rules: starRules({
      focalLengthMm,
      fNumber: exactFNumber(frame.aperture),
      pitchMicrometres,
      sensorDiagonalMm: Math.hypot(sensor.widthMm, sensor.heightMm),
      declinationRadians: fastest,
    }),
    seen: starView && {
      middle: trailAt(starView, starView.view.forward),
      longest: starView.sky
        .map((toward) => trailAt(starView, toward))
        .reduce((a, b) => (b.trailPixels > a.trailPixels ? b : a)),
    },
  };
};
