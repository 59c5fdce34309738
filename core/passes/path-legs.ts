import { angleBetween, distance, sub } from '../geometry/vec.ts';
import type { Waypoint } from '../setup/schema/setup.ts';

/** From one waypoint to the next. */
export interface Leg {
  readonly seconds: number;
  /** How far the lamp goes, and its aim; metres. */
  readonly positionMetres: number;
  readonly aimMetres: number;
  /** By how much the lamp is turned, its own way taken into account; 0 to pi. */
  readonly turnRadians: number;
}

/** The legs of a path, one fewer than its waypoints. Lengths and angles are the same in document and world axes. */
export const legsOf = (waypoints: readonly Waypoint[]): Leg[] =>
  waypoints.slice(1).map((to, i) => {
    const from = waypoints[i] as Waypoint;
    return {
      seconds: to.time - from.time,
      positionMetres: distance(from.position, to.position),
      aimMetres: distance(from.aim, to.aim),
      turnRadians: angleBetween(sub(from.aim, from.position), sub(to.aim, to.position)),
    };
  });

/** Less than this is no movement, metres: what the document rounds away. */
export const stillMetres = 1e-6;

/** What moves on a path: nothing, only the aim, or the lamp itself. */
export type PathKind = 'still' | 'sweep' | 'walk';

export const pathKind = (waypoints: readonly Waypoint[]): PathKind => {
  const legs = legsOf(waypoints);
  if (legs.some(({ positionMetres }) => positionMetres > stillMetres)) return 'walk';
  // a second waypoint at the same place is a sweep still to be drawn
  return legs.length > 0 ? 'sweep' : 'still';
};
