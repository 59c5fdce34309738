import { type GroundPoint, isInsideHull } from '../../../core/geometry/hull.ts';
import { shadowOutlines } from '../../../core/readings/shadow-reading.ts';
import type { Waypoint } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import type { Stage, StageSubject } from '../../../core/world/stage.ts';
import { footprintOf } from './footprint.ts';

/** What a subject shades of the ground, with its foot: a convex outline in metres [east, north] for each of its parts. */
export interface GroundShadow {
  readonly subject: StageSubject;
  readonly outlines: readonly (readonly GroundPoint[])[];
}

/** Of the places that lamps stand at now: plan, small plans and walkaround ask for the same ones. */
const known = new WeakMap<Waypoint, { stage: Stage; shadows: readonly GroundShadow[] }>();

/**
 * The shadows on the ground of every subject under a lamp at a waypoint. A subject that the lamp stands in, such as a hut
 * with a lantern, has none: it would cover all the ground, and what spills through doors and windows is not told by it.
 */
export const groundShadows = (stage: Stage, place: Waypoint): readonly GroundShadow[] => {
  const kept = known.get(place);
  if (kept?.stage === stage) return kept.shadows;
  const lamp = worldFromDocument(place.position);
  const [east, north, up] = place.position;
  const holdsLamp = (subject: StageSubject) =>
    up <= subject.topMetres && isInsideHull(footprintOf(subject), [east, north]);
  // while one subject is moved, the others and their shadows are the same
  const before = new Map(kept?.shadows.map((shadow) => [shadow.subject, shadow]));
  const shadows = stage.subjects
    .filter((subject) => !holdsLamp(subject))
    .map((subject) => before.get(subject) ?? { subject, outlines: shadowOutlines(subject, lamp) });
  known.set(place, { stage, shadows });
  return shadows;
};
