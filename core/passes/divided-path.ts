import { distance, mix, type Vec3 } from '../geometry/vec.ts';
import type { Position, Waypoint } from '../setup/schema/setup.ts';
import { pointsSomewhere } from './stretch-path.ts';

/** How long a leg is to the light: its way over how far the lamp stands off. Along a raked wall, the logarithm of the distances. */
const spanOf = (a: Waypoint, b: Waypoint): number => {
  const off = Math.max(Math.min(distance(a.position, a.aim), distance(b.position, b.aim)), 0.1);
  return Math.max(distance(a.aim, b.aim), distance(a.position, b.position)) / off;
};

/** To the millimetre. */
const rounded = (v: Vec3): Position => v.map((c) => Math.round(c * 1000) / 1000 + 0) as Position;

const between = (a: Waypoint, b: Waypoint): Waypoint => ({
  time: (a.time + b.time) / 2,
  position: rounded(mix(a.position, b.position, 0.5)),
  aim: rounded(mix(a.aim, b.aim, 0.5)),
});

/** Puts a waypoint in the middle of a leg; the path as it is where that would point nowhere, or part less than a millimetre. */
const halved = (path: readonly Waypoint[], leg: number): readonly Waypoint[] => {
  const [a, b] = [path[leg] as Waypoint, path[leg + 1] as Waypoint];
  const middle = between(a, b);
  const isNew = [a, b].every(({ position, aim }) => `${position} ${aim}` !== `${middle.position} ${middle.aim}`);
  return isNew && pointsSomewhere(middle) ? path.toSpliced(leg + 1, 0, middle) : path;
};

/** How often the legs at the ends are halved once more: past an end no beam comes, so that it wants a rest. */
const endHalvings = 3;

/**
 * The same path with waypoints put in the middle of its longest legs, as the light counts them, until there are as many
 * legs as asked for, and short ones at both ends beside: on one leg a lamp can't go slower toward one end. A path with as
 * many legs stays as it is.
 *
 * @param waypoints at least two
 */
export const dividedPath = (waypoints: readonly Waypoint[], legs: number): readonly Waypoint[] => {
  if (waypoints.length > legs) return waypoints;
  let path = waypoints;
  while (path.length - 1 < legs) {
    const spans = path.slice(1).map((to, i) => spanOf(path[i] as Waypoint, to));
    const next = halved(path, spans.indexOf(Math.max(...spans)));
    if (next === path) break;
    path = next;
  }
  for (let i = 0; i < endHalvings; i++) {
    path = halved(path, 0);
    path = halved(path, path.length - 2);
  }
  return path;
};
