import { type CameraView, projectPoint, viewDirection } from '../camera/camera-view.ts';
import type { Vec3 } from '../geometry/vec.ts';
import { type SurfacePoint, surfaceAlong } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';

/** Rays along each side of the box round the patch in the picture. */
const grid = 32;
/** Under so many points a patch has no contrast worth the name; our choice. */
const fewestPoints = 16;

type Place = readonly [x: number, y: number];

/** Whether a place lies inside a closed line, by the number of its sides to the right of it (even-odd rule). */
const isInside = (corners: readonly Place[], [x, y]: Place): boolean => {
  let inside = false;
  corners.forEach(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length] as Place;
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  });
  return inside;
};

/**
 * What the camera sees within a patch: the first hits of a grid of rays, even in the picture, through the part of the
 * picture that lies inside the patch's outline. Whatever stands in front of the patch is seen instead of it; the sky is
 * left out. Empty when a corner lies at or behind the lens, or when hardly any of the patch is in the picture.
 *
 * @param corners in order round the patch, world metres
 */
export const patchView = (stage: Stage, view: CameraView, corners: readonly Vec3[]): SurfacePoint[] => {
  const places = corners.flatMap((corner) => {
    const place = projectPoint(view, corner);
    return place ? [place] : [];
  });
  if (places.length < corners.length) return [];
  const span = (axis: 0 | 1): readonly [from: number, step: number] => {
    const values = places.map((place) => Math.min(Math.max(place[axis], 0), 1));
    const from = Math.min(...values);
    return [from, (Math.max(...values) - from) / grid];
  };
  const [[left, across], [top, down]] = [span(0), span(1)];
  const seen: SurfacePoint[] = [];
  for (let j = 0; j < grid; j++)
    for (let i = 0; i < grid; i++) {
      const place = [left + (i + 0.5) * across, top + (j + 0.5) * down] as const;
      if (!isInside(places, place)) continue;
      const point = surfaceAlong(stage, view.position, viewDirection(view, ...place));
      if (point) seen.push(point);
    }
  return seen.length < fewestPoints ? [] : seen;
};
