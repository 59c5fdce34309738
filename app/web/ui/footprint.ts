import { convexHull, type GroundPoint } from '../../../core/geometry/hull.ts';
import type { StageSubject } from '../../../core/world/stage.ts';

const footprints = new WeakMap<StageSubject, GroundPoint[]>();

/** Convex outline of a subject from above, in metres [east, north]. Worked out once for each. */
export const footprintOf = (subject: StageSubject): GroundPoint[] => {
  const known = footprints.get(subject);
  if (known) return known;
  const { points } = subject;
  const places = Array.from(
    { length: points.length / 3 },
    (_, i): GroundPoint => [points[3 * i] as number, -(points[3 * i + 2] as number)],
  );
  const hull = convexHull(places);
  footprints.set(subject, hull);
  return hull;
};
