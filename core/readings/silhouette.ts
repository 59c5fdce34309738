import { type CameraView, projectPoint, viewDirection } from '../camera/camera-view.ts';
import { dot, type Vec3 } from '../geometry/vec.ts';
import { type SurfacePoint, surfaceAlong } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';

/** Cells of the grid of rays over the subject's place in the picture. */
const cells = 56 * 56;
/** Fewest cells either way, for what is seen very narrow. */
const fewestCells = 12;
/** Steps by which an outline point is moved out to the very edge. */
const steps = 7;
/** Where a step cuts: not in the middle, or a ray may run right along an edge between two facets and meet the far one. */
const cut = 0.53;

type Box = readonly [left: number, top: number, right: number, bottom: number];

const pictureBox = (stage: Stage, view: CameraView, subject: number): Box | null => {
  const points = stage.subjects[subject]?.points ?? new Float64Array();
  let [left, top, right, bottom] = [1, 1, 0, 0];
  for (let i = 0; i < points.length; i += 3) {
    const place = projectPoint(view, [points[i] as number, points[i + 1] as number, points[i + 2] as number]);
    if (!place) continue;
    [left, right] = [Math.min(left, place[0]), Math.max(right, place[0])];
    [top, bottom] = [Math.min(top, place[1]), Math.max(bottom, place[1])];
  }
  const box: Box = [Math.max(left, 0), Math.max(top, 0), Math.min(right, 1), Math.min(bottom, 1)];
  return box[2] > box[0] && box[3] > box[1] ? box : null;
};

/** Columns and rows of nearly square cells, so that no side of an outline gets more points than another. */
const gridOf = (view: CameraView, [left, top, right, bottom]: Box): readonly [columns: number, rows: number] => {
  const shape = ((right - left) * view.tanHalfWidth) / ((bottom - top) * view.tanHalfHeight);
  const columns = Math.round(Math.sqrt(cells * shape));
  const fit = Math.min(Math.max(columns, fewestCells), Math.floor(cells / fewestCells));
  return [fit, Math.round(cells / fit)];
};

/** A point of the subject as the camera sees it, with the surface that it stands for. */
export interface FacePoint {
  readonly point: SurfacePoint;
  readonly areaSquareMetres: number;
}

/** A subject in the picture: points of its outline and of all that the camera sees of it. */
export interface Silhouette {
  readonly edge: readonly SurfacePoint[];
  readonly face: readonly FacePoint[];
  /** Directions from the camera just past the outline, unit, where it stands before the sky. */
  readonly sky: readonly Vec3[];
}

/** Least cosine between surface and line of sight that an area is divided by: a cell at the outline is not endless. */
const leastCos = 0.05;

/** Surface behind a cell of the picture: its solid angle times distance squared, over the cosine. */
const areaBehind = (
  view: CameraView,
  cell: readonly [number, number],
  direction: Vec3,
  point: SurfacePoint,
): number => {
  const onPlane = cell[0] * 2 * view.tanHalfWidth * cell[1] * 2 * view.tanHalfHeight;
  const solidAngle = onPlane * dot(direction, view.forward) ** 3;
  return (solidAngle * point.distance ** 2) / Math.max(-dot(direction, point.normal), leastCos);
};

/**
 * Outline and face of a subject as the camera sees them: a grid of rays, and for each step from subject to background
 * the last point of the subject, found by cutting the step again and again. Edges where something stands in front, and
 * the picture's own edges, are not outline; nor is the foot where the subject meets the ground in front of it.
 */
export const silhouetteOf = (stage: Stage, view: CameraView, subject: number): Silhouette => {
  const box = pictureBox(stage, view, subject);
  const [edge, face, sky]: [SurfacePoint[], FacePoint[], Vec3[]] = [[], [], []];
  if (!box) return { edge, face, sky };
  const [columns, rows] = gridOf(view, box);
  const step: readonly [number, number] = [(box[2] - box[0]) / columns, (box[3] - box[1]) / rows];
  const look = (x: number, y: number) => surfaceAlong(stage, view.position, viewDirection(view, x, y));
  const at = (i: number, j: number) => [box[0] + (i + 0.5) * step[0], box[1] + (j + 0.5) * step[1]] as const;
  const seen = Array.from({ length: columns * rows }, (_, k) => look(...at(k % columns, Math.floor(k / columns))));
  const hit = (i: number, j: number) => {
    const inside = i >= 0 && j >= 0 && i < columns && j < rows;
    return inside ? seen[j * columns + i] : look(...at(i, j));
  };
  for (let j = 0; j < rows; j++)
    for (let i = 0; i < columns; i++) {
      const own = seen[j * columns + i];
      if (own?.subject !== subject) continue;
      const direction = viewDirection(view, ...at(i, j));
      face.push({ point: own, areaSquareMetres: areaBehind(view, step, direction, own) });
      for (const [di, dj] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ] as const) {
        const other = hit(i + di, j + dj);
        const behind = !other || (other.subject !== subject && other.distance > own.distance * 1.02);
        if (!behind) continue;
        const found = toEdge(look, at(i, j), at(i + di, j + dj), own, other ?? null, subject);
        edge.push(found.point);
        if (found.isSky) sky.push(viewDirection(view, ...found.past));
      }
    }
  return { edge, face, sky };
};

/** Where an outline is cut: the last point of the subject, and the place in the picture just past it. */
interface Cut {
  readonly point: SurfacePoint;
  readonly past: readonly [number, number];
  readonly isSky: boolean;
}

const toEdge = (
  look: (x: number, y: number) => SurfacePoint | null,
  inside: readonly [number, number],
  outside: readonly [number, number],
  start: SurfacePoint,
  beyond: SurfacePoint | null,
  subject: number,
): Cut => {
  let [a, b, best, behind] = [inside, outside, start, beyond];
  for (let n = 0; n < steps; n++) {
    const middle = [a[0] + cut * (b[0] - a[0]), a[1] + cut * (b[1] - a[1])] as const;
    const met = look(...middle);
    if (met?.subject === subject) [a, best] = [middle, met];
    else [b, behind] = [middle, met];
  }
  return { point: best, past: b, isSky: behind === null };
};
