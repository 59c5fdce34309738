import type { GroundPoint } from '../geometry/hull.ts';
import { degreesApart, degreesFromRadians, wrapDegrees } from '../units/angle.ts';
import type { ShadowReading } from './shadow-reading.ts';

/** How far a guess at a shadow's tip was off. */
export interface GuessReading {
  /** From the guess to the tip; null for a shadow without end. */
  readonly offMetres: number | null;
  /**
   * Between the ways from the foot to the guess and to the tip (for an endless shadow: the way that it points), 0 to 180;
   * null where one of them has no direction.
   */
  readonly offDegrees: number | null;
}

/** Nearer to the foot than this a place lies on it and has no direction from it. */
const leastMetres = 0.01;

const away = ([fromEast, fromNorth]: GroundPoint, [east, north]: GroundPoint): number =>
  Math.hypot(east - fromEast, north - fromNorth);

/** Degrees clockwise from north; null for a place on the foot. */
const bearing = (foot: GroundPoint, place: GroundPoint): number | null =>
  away(foot, place) < leastMetres
    ? null
    : wrapDegrees(degreesFromRadians(Math.atan2(place[0] - foot[0], place[1] - foot[1])));

/**
 * Judges where somebody pointed for the tip of a shadow. Of a shadow without end only the direction can be right or wrong.
 * Plane geometry; the tip is `shadowReading`'s.
 *
 * @param guess where they pointed, [east, north] in metres, document axes
 * @param foot middle of what throws the shadow, on the ground, in the same axes
 */
export const judgeGuess = (guess: GroundPoint, foot: GroundPoint, shadow: ShadowReading): GuessReading => {
  const { tip, bearingDegrees } = shadow;
  const guessed = bearing(foot, guess);
  const right = tip ? bearing(foot, tip) : bearingDegrees;
  return {
    offMetres: tip && away(guess, tip),
    offDegrees: guessed === null || right === null ? null : degreesApart(guessed, right),
  };
};
