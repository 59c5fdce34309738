import { type CameraView, isInFrame } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { convexHullOfMany, type GroundPoint, isInsideHull } from '../geometry/hull.ts';
import { projectToGround } from '../geometry/shadow.ts';
import { distance, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians, wrapDegrees } from '../units/angle.ts';
import type { Stage, StageSubject } from '../world/stage.ts';

/** The shadow that a lamp makes a subject throw on the ground. Document axes: bearings from the scene's north. */
export interface ShadowReading {
  readonly subjectId: string;
  /** Way that the shadow points: from lamp to the subject's middle, clockwise from the scene's north. */
  readonly bearingDegrees: number;
  /** From under the point that throws the tip to the tip; null when endless. */
  readonly lengthMetres: number | null;
  /** The lamp is at or below the subject's top. */
  readonly endless: boolean;
  readonly tip: GroundPoint | null;
  /** Share of the shadowed ground (out to 60 m) that lies inside the picture's edges; null when there is no shadow. */
  readonly inFrameShare: number | null;
}

/** Where endless shadows are cut off, metres from the lamp. */
export const shadowReachMetres = 60;

const pointsOf = function* ({ points }: StageSubject): Generator<Vec3> {
  for (let i = 0; i < points.length; i += 3)
    yield [points[i] as number, Math.max(points[i + 1] as number, 0), points[i + 2] as number];
};

/**
 * Outline on the ground of the shadow of places together with their foot, convex, cut off at the reach; places above the
 * lamp throw theirs away to the horizon. Makes nothing for each place, for a scan has a hundred thousand.
 *
 * @param points three numbers each, metres in world axes
 */
export const shadowOutline = (points: Float64Array, [x, y, z]: Vec3): GroundPoint[] => {
  const places = new Float64Array((points.length / 3) * 2);
  for (let i = 0, at = 0; i < points.length; i += 3, at += 2) {
    const up = Math.max(points[i + 1] as number, 0);
    // by similar triangles, as `projectToGround`
    const k = y > up ? y / (y - up) : 1;
    const [dx, dz] = [((points[i] as number) - x) * k, ((points[i + 2] as number) - z) * k];
    const away = Math.sqrt(dx * dx + dz * dz);
    const cut = y > up && away <= shadowReachMetres ? 1 : shadowReachMetres / Math.max(away, 1e-9);
    places[at] = x + dx * cut;
    places[at + 1] = -(z + dz * cut);
  }
  return convexHullOfMany(places);
};

/** The same for each of a subject's parts: light falls through between them. */
export const shadowOutlines = ({ points, partStarts }: StageSubject, lamp: Vec3): GroundPoint[][] =>
  partStarts.slice(1).map((end, p) => shadowOutline(points.subarray(partStarts[p], end), lamp));

/** Reads a subject's shadow under a lamp at a position in world axes. Visibility of the tip is not considered. */
export const shadowReading = (stage: Stage, view: CameraView, subject: StageSubject, lamp: Vec3): ShadowReading => {
  // what lies under the ground throws no shadow on it, and a lamp down there lights none
  const endless = lamp[1] <= Math.max(subject.topMetres, 0);
  const middle = middleOf(subject);
  let tip: GroundPoint | null = null;
  let lengthMetres: number | null = null;
  if (!endless) {
    let farthest = -1;
    for (const point of pointsOf(subject)) {
      const shadow = projectToGround(lamp, point) as Vec3;
      const away = Math.hypot(shadow[0] - lamp[0], shadow[2] - lamp[2]);
      if (away <= farthest) continue;
      farthest = away;
      tip = [shadow[0], -shadow[2]];
      lengthMetres = Math.hypot(shadow[0] - point[0], shadow[2] - point[2]);
    }
  }
  const [toEast, toNorth] = [middle[0] - lamp[0], lamp[2] - middle[2]];
  return {
    subjectId: subject.id,
    bearingDegrees: wrapDegrees(degreesFromRadians(Math.atan2(toEast, toNorth))),
    lengthMetres,
    endless,
    tip,
    inFrameShare: inFrameShare(stage, view, subject, lamp),
  };
};

/** Middle of a subject's extent, level. */
const middleOf = (subject: StageSubject): Vec3 => {
  const [low, high] = [
    [Infinity, Infinity],
    [-Infinity, -Infinity],
  ] as [[number, number], [number, number]];
  for (const [x, , z] of pointsOf(subject)) {
    [low[0], low[1]] = [Math.min(low[0], x), Math.min(low[1], z)];
    [high[0], high[1]] = [Math.max(high[0], x), Math.max(high[1], z)];
  }
  return [(low[0] + high[0]) / 2, 0, (low[1] + high[1]) / 2];
};

/** Counts a grid of ground points that the subject really keeps the lamp from, by rays, and how many the camera frames. */
const inFrameShare = (stage: Stage, view: CameraView, subject: StageSubject, lamp: Vec3): number | null => {
  const outline = shadowOutline(subject.points, lamp);
  const easts = outline.map(([east]) => east);
  const norths = outline.map(([, north]) => north);
  const [west, east, south, north] = [Math.min(...easts), Math.max(...easts), Math.min(...norths), Math.max(...norths)];
  const index = stage.subjects.indexOf(subject);
  const counts = (triangle: number) => stage.subjectOfTriangle[triangle] === index;
  const grid = 24;
  let [shadowed, framed] = [0, 0];
  for (let i = 0; i < grid; i++)
    for (let j = 0; j < grid; j++) {
      const place: GroundPoint = [
        west + ((i + 0.5) / grid) * (east - west),
        south + ((j + 0.5) / grid) * (north - south),
      ];
      if (!isInsideHull(outline, place)) continue;
      const ground: Vec3 = [place[0], 1e-4, -place[1]];
      if (!anyHit(stage.tree, ground, normalize(sub(lamp, ground)), distance(lamp, ground), counts)) continue;
      shadowed++;
      if (isInFrame(view, ground)) framed++;
    }
  return shadowed > 0 ? framed / shadowed : null;
};
