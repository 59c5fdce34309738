import { type GroundPoint, isInsideHull } from '../geometry/hull.ts';
import { type Convex, distanceToHull, grown, holds } from './convex.ts';
import { shortestWay, type Way } from './shortest-way.ts';

/** Half of a person's width with some air: how far a walker keeps from things, metres. Common practice, no published source. */
export const walkerHalfWidthMetres = 0.3;

/** A thing to walk round. */
export interface Footprint {
  readonly hull: readonly GroundPoint[];
  /** The hull grown by `walkerHalfWidthMetres`. */
  readonly keptClear: Convex;
}

export const footprintOf = (hull: readonly GroundPoint[]): Footprint => ({
  hull,
  keptClear: grown(hull, walkerHalfWidthMetres),
});

/**
 * A thing as it stands in the way between two places. One that an end lies in keeps nobody off: one stands on it, in it
 * or under it. Where an end lies nearer than a walker's half width, one squeezes by.
 */
const inTheWay = ({ hull, keptClear }: Footprint, ends: readonly GroundPoint[]): Convex[] => {
  const near = ends.filter((end) => holds(keptClear, end));
  if (near.length === 0) return [keptClear];
  if (near.some((end) => isInsideHull(hull, end))) return [];
  const least = Math.min(...near.map((end) => distanceToHull(hull, end)));
  return [grown(hull, least * 0.9)];
};

/**
 * The shortest way on foot on the level round things that stand there.
 *
 * @param picture what the camera sees of the level, to be kept out of; null = one may cross it. It keeps nobody out when
 *   an end lies in it, since one has to be there anyway.
 * @returns null when there is none: walled in
 */
export const shortestWalk = (
  from: GroundPoint,
  to: GroundPoint,
  footprints: readonly Footprint[],
  picture: Convex | null,
): Way | null => {
  const ends = [from, to];
  const obstacles = footprints.flatMap((footprint) => inTheWay(footprint, ends));
  const isKept = picture !== null && !ends.some((end) => holds(picture, end));
  return shortestWay(from, to, isKept ? [...obstacles, picture] : obstacles);
};

/**
 * How much farther one walks in the dark than the shortest way: round stones, tufts and guy lines, feeling for the place.
 * Common practice, no published source: for two lamps 7.6 m from a tree and 120° apart, between whose holders the straight
 * way is 13.9 m, 16 to 18 m are reckoned (the trade notes' lone oak).
 */
export const detourRatio = 1.2;

/** Steps up to this high keep nobody off, metres. Common practice, no published source. */
export const stepMetres = 0.3;
