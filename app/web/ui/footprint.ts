import { convexHullOfMany, type GroundPoint } from '../../../core/geometry/hull.ts';
import { areaOf } from '../../../core/geometry/triangulate.ts';
import type { StageSubject } from '../../../core/world/stage.ts';

type Outline = readonly GroundPoint[];

/** What is worked out once for each subject that stands where it stands. */
const keptFor = <T>(make: (subject: StageSubject) => T) => {
  const known = new WeakMap<StageSubject, T>();
  return (subject: StageSubject): T => {
    const kept = known.get(subject) ?? make(subject);
    known.set(subject, kept);
    return kept;
  };
};

/** Convex outline of places from above, [east, north] in metres. */
const outlineOf = (points: Float64Array): GroundPoint[] => {
  const places = new Float64Array((points.length / 3) * 2);
  for (let i = 0, at = 0; i < points.length; i += 3, at += 2) {
    places[at] = points[i] as number;
    places[at + 1] = -(points[i + 2] as number);
  }
  return convexHullOfMany(places);
};

/** Convex outline of a whole subject from above, in metres [east, north]. */
export const footprintOf = keptFor(({ points }): Outline => outlineOf(points));

/** Convex outline of each of its parts from above: together they show the rooms of a ruin and the gaps of a row of slabs. */
export const partFootprintsOf = keptFor(({ points, partStarts }): readonly Outline[] =>
  partStarts.slice(1).map((end, p) => outlineOf(points.subarray(partStarts[p], end))),
);

/** Square metres that a subject covers, gaps and all. */
export const footprintAreaOf = keptFor((subject) => areaOf(footprintOf(subject)));

/** Largest first, so that what is drawn later is not hidden. */
export const largestFirst = <T>(items: readonly T[], subjectOf: (item: T) => StageSubject): T[] =>
  [...items].sort((a, b) => footprintAreaOf(subjectOf(b)) - footprintAreaOf(subjectOf(a)));
