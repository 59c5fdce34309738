import type { SchemeReport } from '../../cautions/setup-report.ts';
import { convexHullOfMany, type GroundPoint } from '../../geometry/hull.ts';
import { areaOf } from '../../geometry/triangulate.ts';
import type { Hazard, Setup } from '../../setup/schema/setup.ts';
import { type StageSubject, stageOf } from '../../world/stage.ts';
import type { PassPlaceKey } from './pass-key.ts';
import { keyOfWalkEnd } from './pass-key.ts';

/** A way on foot, from row to row; null = from the camera, or back to it. */
export interface PlanWalk {
  readonly from: PassPlaceKey | null;
  readonly to: PassPlaceKey | null;
  /** [east, north]. */
  readonly points: readonly GroundPoint[];
}

/** What the plan shows beside the card's own rows, [east, north] in metres. */
export interface PlanData {
  /** Of each subject, the convex outlines of its parts from above; subjects that cover most come first. */
  readonly subjects: readonly (readonly (readonly GroundPoint[])[])[];
  readonly hazards: readonly Pick<Hazard, 'name' | 'position' | 'radiusMetres'>[];
  readonly walks: readonly PlanWalk[];
  /** True bearing of the scene's north axis. */
  readonly northDegrees: number;
}

/** Most parts of a subject that are drawn one by one; of more, the whole. */
const mostParts = 200;

const outlineOf = (points: Float64Array): GroundPoint[] => {
  const places = new Float64Array((points.length / 3) * 2);
  for (let i = 0, at = 0; i < points.length; i += 3, at += 2) {
    places[at] = points[i] as number;
    places[at + 1] = -(points[i + 2] as number);
  }
  return convexHullOfMany(places);
};

const outlinesOf = ({ points, partStarts }: StageSubject): GroundPoint[][] =>
  partStarts.length - 1 > mostParts
    ? [outlineOf(points)]
    : Array.from(partStarts.slice(1), (end, p) => outlineOf(points.subarray(partStarts[p], end)));

/** What lies and stands on the ground of a setup, and the ways on foot of one of its schemes. */
export const planData = (setup: Setup, { walks }: Pick<SchemeReport, 'walks'>): PlanData => ({
  subjects: stageOf(setup)
    .subjects.map((subject) => ({ outlines: outlinesOf(subject), area: areaOf(outlineOf(subject.points)) }))
    .sort((a, b) => b.area - a.area)
    .map(({ outlines }) => outlines),
  hazards: setup.hazards,
  walks: walks.map(({ from, to, points }) => ({ from: keyOfWalkEnd(from), to: keyOfWalkEnd(to), points })),
  northDegrees: setup.place.northDegrees,
});
