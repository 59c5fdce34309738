import { angleBetween, sub, type Vec3 } from '../geometry/vec.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { World } from '../world/world.ts';

/**
 * Index of the subject that a pass is about: the one seen at the aim point, else the one nearest to it in the picture; -1
 * if there is none.
 *
 * @param surface that the camera sees at the aim, as `targetSurface` gives it
 */
export const passSubject = ({ stage, view }: World, aim: Vec3, surface: SurfacePoint | null): number => {
  if (surface && surface.subject >= 0) return surface.subject;
  const toAim = sub(aim, view.position);
  let [best, nearest] = [-1, Number.POSITIVE_INFINITY];
  stage.subjects.forEach(({ points }, s) => {
    for (let i = 0; i < points.length; i += 3) {
      const point: Vec3 = [points[i] as number, points[i + 1] as number, points[i + 2] as number];
      const apart = angleBetween(toAim, sub(point, view.position));
      if (apart < nearest) [best, nearest] = [s, apart];
    }
  });
  return best;
};
