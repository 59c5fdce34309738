import { dot, length, sub } from '../geometry/vec.ts';
import type { Waypoint } from '../setup/schema/setup.ts';
import { betweenWaypoints } from './between-waypoints.ts';
import { pathKind } from './path-legs.ts';

/** By how much the turn of a lamp may change on a leg, stops from its slowest to its fastest. */
const mostStops = 0.6;
/** Most waypoints that a path is divided into; more make a list that nobody reads. */
const mostWaypoints = 24;
/** Nearer than this, no aim is looked at more closely, metres. */
const nearestMetres = 0.1;

/** How the turn of a lamp changes along a leg: to and from the place nearest to it, where it is fastest. */
interface Turn {
  /** Length of the leg, and where on it that nearest place lies; metres, of the straight line on which the leg lies. */
  readonly metres: number;
  readonly nearest: number;
  /** How far that line is from the lamp, metres. */
  readonly offMetres: number;
}

const turnOf = ({ position }: Waypoint, from: Waypoint, to: Waypoint): Turn => {
  const [way, out] = [sub(to.aim, from.aim), sub(position, from.aim)];
  const metres = length(way);
  const nearest = metres > 0 ? dot(out, way) / metres : 0;
  const offMetres = Math.max(Math.sqrt(Math.max(dot(out, out) - nearest * nearest, 0)), nearestMetres);
  return { metres, nearest, offMetres };
};

/** Stops by which the turn is slower than where it is fastest, so far along: a spot at v turns its lamp by v h / r². */
const slowerStops = ({ nearest, offMetres }: Turn, along: number): number =>
  Math.log2(1 + ((along - nearest) / offMetres) ** 2);

/** The same, counted on from the leg's line far before the lamp to far behind: it rises all along. */
const signedStops = (turn: Turn, along: number): number => Math.sign(along - turn.nearest) * slowerStops(turn, along);

/** Shares of a leg at which it is cut into so many, on each of which the turn changes as much. */
const cutsOf = (turn: Turn, count: number): number[] => {
  const [first, last] = [signedStops(turn, 0), signedStops(turn, turn.metres)];
  return Array.from({ length: count - 1 }, (_, k) => {
    const stops = first + ((last - first) * (k + 1)) / count;
    const aside = Math.sign(stops) * turn.offMetres * Math.sqrt(2 ** Math.abs(stops) - 1);
    return (turn.nearest + aside) / turn.metres;
  });
};

/**
 * The same sweep with waypoints put into the legs on which a hand that turns evenly can't be told by the times of both ends:
 * on one leg the *spot* goes evenly, and turns its lamp fast near to it and slowly far off. Along a wall from 3 to 20 m that
 * takes eight more. The spot of a lamp turned evenly keeps within 0.3 stop of its speed then. At most 24 waypoints in all;
 * done again, nothing changes. Walks stay: on them the lamp itself goes evenly.
 */
export const steadyPath = (waypoints: readonly Waypoint[]): readonly Waypoint[] => {
  if (pathKind(waypoints) !== 'sweep') return waypoints;
  const turns = waypoints.slice(1).map((to, i) => turnOf(waypoints[i] as Waypoint, waypoints[i] as Waypoint, to));
  const stops = turns.map((turn) => signedStops(turn, turn.metres) - signedStops(turn, 0));
  const counts = turns.map(() => 1);
  for (let room = mostWaypoints - waypoints.length; room > 0; room--) {
    const each = counts.map((count, k) => (stops[k] as number) / count);
    const worst = each.indexOf(Math.max(...each));
    // a hair more is a rounding of what was divided before
    if ((each[worst] as number) <= mostStops * 1.02) break;
    counts[worst] = (counts[worst] as number) + 1;
  }
  if (counts.every((count) => count === 1)) return waypoints;
  return waypoints.flatMap((from, k) => {
    const to = waypoints[k + 1];
    if (!to) return [from];
    const inner = cutsOf(turns[k] as Turn, counts[k] as number).flatMap(
      (share) => betweenWaypoints(from, to, share) ?? [],
    );
    return [from, ...inner];
  });
};
