import { type CameraView, viewDirection } from '../camera/camera-view.ts';
import { dot, length, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';

/** Most waypoints that a drawn line becomes. */
export const mostDrawnAims = 16;
/** How far the aims may lie beside what was drawn over, to begin with: less than a beam is wide. Metres. */
const firstTolerance = 0.05;

/** Distance of a place from the straight piece between two others. */
const apart = (p: Vec3, a: Vec3, b: Vec3): number => {
  const [way, to] = [sub(b, a), sub(p, a)];
  const whole = dot(way, way);
  const t = whole > 0 ? Math.min(Math.max(dot(to, way) / whole, 0), 1) : 0;
  return length(sub(to, scale(way, t)));
};

/** Douglas and Peucker (1973), in three dimensions; ends stay. */
const simplified = (points: readonly Vec3[], tolerance: number): Vec3[] => {
  const [first, last] = [points[0] as Vec3, points.at(-1) as Vec3];
  let [farthest, most] = [-1, tolerance];
  for (let i = 1; i < points.length - 1; i++) {
    const away = apart(points[i] as Vec3, first, last);
    if (away > most) [farthest, most] = [i, away];
  }
  if (farthest < 0) return [first, last];
  return [
    ...simplified(points.slice(0, farthest + 1), tolerance),
    ...simplified(points.slice(farthest), tolerance).slice(1),
  ];
};

/**
 * What a line drawn in the picture lies on in the scene, as few places as it takes: straight from one to the next they stay
 * within 5 cm of it, or within as little as 16 places allow. Where the line crosses the sky it has none.
 *
 * @param line places in the picture, 0 to 1 from the left and from the top
 * @returns places in world metres, in order; null when fewer than two that differ meet anything
 */
export const aimsInPicture = (
  stage: Stage,
  view: CameraView,
  line: readonly (readonly [x: number, y: number])[],
): Vec3[] | null => {
  const met = line.flatMap(([x, y]): Vec3[] => {
    const found = surfaceAlong(stage, view.position, viewDirection(view, x, y));
    return found ? [found.position] : [];
  });
  if (met.length < 2) return null;
  let tolerance = firstTolerance;
  let aims = simplified(met, tolerance);
  while (aims.length > mostDrawnAims) {
    tolerance *= 1.3;
    aims = simplified(met, tolerance);
  }
  const way = aims.slice(1).reduce((sum, aim, i) => sum + length(sub(aim, aims[i] as Vec3)), 0);
  return way > firstTolerance ? aims : null;
};
