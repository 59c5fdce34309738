import { convexHullOfMany, type GroundPoint } from '../../../core/geometry/hull.ts';
import type { StageSubject } from '../../../core/world/stage.ts';

const footprints = new WeakMap<StageSubject, GroundPoint[]>();

/** Convex outline of a subject from above, in metres [east, north]. Worked out once for each that stands where it stands. */
export const footprintOf = (subject: StageSubject): GroundPoint[] => {
  const known = footprints.get(subject);
  if (known) return known;
  const { points } = subject;
  const places = new Float64Array((points.length / 3) * 2);
  for (let i = 0, at = 0; i < points.length; i += 3, at += 2) {
    places[at] = points[i] as number;
    places[at + 1] = -(points[i + 2] as number);
  }
  const hull = convexHullOfMany(places);
  footprints.set(subject, hull);
  return hull;
};
