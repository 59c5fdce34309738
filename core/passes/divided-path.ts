import { distance } from '../geometry/vec.ts';
import type { Waypoint } from '../setup/schema/setup.ts';
import { betweenWaypoints } from './between-waypoints.ts';

/** How long a leg is to the light: its way over how far the lamp stands off. Along a raked wall, the logarithm of the distances. */
export const spanOf = (a: Waypoint, b: Waypoint): number => {
  const off = Math.max(Math.min(distance(a.position, a.aim), distance(b.position, b.aim)), 0.1);
  return Math.max(distance(a.aim, b.aim), distance(a.position, b.position)) / off;
};

/** Puts a waypoint in the middle of a leg; the path as it is where that would point nowhere, or part less than a millimetre. */
const halved = (path: readonly Waypoint[], leg: number): readonly Waypoint[] => {
  const middle = betweenWaypoints(path[leg] as Waypoint, path[leg + 1] as Waypoint, 0.5);
  return middle ? path.toSpliced(leg + 1, 0, middle) : path;
};

/** Most legs that long ones are halved into, and how often those at the ends are halved beyond that. */
const [mostLegs, endHalvings] = [16, 3];

/**
 * The same path with waypoints put in the middle of its longest legs, as the light counts them, until none is longer than
 * asked for: on one leg a lamp can't go slower toward one end. At most 16 legs; where that is not enough, the legs at both
 * ends alone are halved on, since past an end no beam comes and the lamp wants to rest there. Done again, nothing changes.
 *
 * @param waypoints at least two
 * @param longest way of a leg over how far the lamp stands off
 */
export const dividedPath = (waypoints: readonly Waypoint[], longest: number): readonly Waypoint[] => {
  if (waypoints.length > mostLegs) return waypoints;
  const spans = (of: readonly Waypoint[]) => of.slice(1).map((to, i) => spanOf(of[i] as Waypoint, to));
  let path = waypoints;
  for (let most = spans(path); path.length <= mostLegs && Math.max(...most) > longest; most = spans(path)) {
    const next = halved(path, most.indexOf(Math.max(...most)));
    if (next === path) break;
    path = next;
  }
  if (path.length <= mostLegs) return path;
  for (let i = 0; i < endHalvings; i++) {
    if ((spans(path)[0] as number) > longest) path = halved(path, 0);
    if ((spans(path).at(-1) as number) > longest) path = halved(path, path.length - 2);
  }
  return path;
};
