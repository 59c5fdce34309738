import type { Waypoint } from '../setup/schema/setup.ts';
import { legsOf, pathKind, stillMetres } from './path-legs.ts';
import type { Stroke } from './stroke.ts';
import { timesFromWeights } from './times-from-weights.ts';

/**
 * Times of a path gone at one speed, as a hand keeps it: a sweep is turned by as much each second, wherever the light lands;
 * on a walk the lamp goes as far each second, and its light on legs where it rests. A leg on which nothing moves takes next
 * to no time.
 *
 * @param waypoints at least two; their own times are of no account
 * @returns one time a waypoint, from the stroke's start to its end; seconds after the shutter opens
 */
export const evenSpeedTimes = (waypoints: readonly Waypoint[], stroke: Pick<Stroke, 'on' | 'off'>): number[] => {
  const isWalk = pathKind(waypoints) === 'walk';
  const ways = legsOf(waypoints).map(({ positionMetres, aimMetres, turnRadians }) => {
    if (!isWalk) return turnRadians;
    return positionMetres > stillMetres ? positionMetres : aimMetres;
  });
  return timesFromWeights(ways, stroke);
};
