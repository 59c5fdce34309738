import type { Waypoint } from '../setup/schema/setup.ts';
import { legMetres, legsOf } from './path-legs.ts';
import type { Stroke } from './stroke.ts';
import { timesFromWeights } from './times-from-weights.ts';

/**
 * Times of a path gone at one speed: that of the lit spot along the aims, or of the lamp on legs where its aim rests. A leg
 * on which nothing moves takes next to no time.
 *
 * @param waypoints at least two; their own times are of no account
 * @returns one time a waypoint, from the stroke's start to its end; seconds after the shutter opens
 */
export const evenSpeedTimes = (waypoints: readonly Waypoint[], stroke: Pick<Stroke, 'on' | 'off'>): number[] =>
  timesFromWeights(legsOf(waypoints).map(legMetres), stroke);
