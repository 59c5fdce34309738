import { closestHit } from '../../../core/geometry/cast-ray.ts';
import type { Mesh } from '../../../core/geometry/mesh.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { buildRayTree } from '../../../core/geometry/ray-tree.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';

/**
 * Share of the ground that lies in shadow on a mesh, seen from above, under parallel light: by rays from random places
 * within a circle.
 *
 * @param toLight unit
 */
export const shadowedShare = (mesh: Mesh, withinMetres: number, toLight: Vec3, rays = 4000, seed = 3): number => {
  const tree = buildRayTree(mesh.positions);
  const random = seededRandom(seed);
  let [dark, all] = [0, 0];
  for (let n = 0; n < rays; n++) {
    const [away, turn] = [withinMetres * Math.sqrt(random()), 2 * Math.PI * random()];
    const above: Vec3 = [away * Math.cos(turn), 10, away * Math.sin(turn)];
    const down = closestHit(tree, above, [0, -1, 0]);
    if (!down) continue;
    all++;
    const origin: Vec3 = [above[0], 10 - down.t + 2e-5, above[2]];
    if (closestHit(tree, origin, toLight)) dark++;
  }
  return dark / all;
};

/**
 * The same for an endless section that repeats, solved in one dimension: a place is in shadow where the section behind
 * it, toward the light, rises over the line that the light comes along. Brute force over so many places.
 *
 * @param height of the section over one period, at 0 to 1 along it
 * @param slope of the light: its rise over its run, toward growing x
 */
export const shadowedShareOfSection = (
  height: (phase: number) => number,
  periodMetres: number,
  slope: number,
  places = 4000,
): number => {
  const heights = Array.from({ length: places }, (_, i) => height(i / places));
  const step = periodMetres / places;
  // from the far end toward smaller x: the line of light that grazes all that was passed falls by `slope`
  let grazing = Number.NEGATIVE_INFINITY;
  let dark = 0;
  for (let n = 4 * places - 1; n >= 0; n--) {
    const own = heights[n % places] as number;
    grazing -= slope * step;
    if (n < places && own < grazing - 1e-12) dark++;
    grazing = Math.max(grazing, own);
  }
  return dark / places;
};
