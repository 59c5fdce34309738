import type { Vec3 } from '../geometry/vec.ts';
import { poseToward } from '../photometry/emitter.ts';
import { openLux } from '../photometry/open-light.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { Source } from '../world/world.ts';
import type { Moment } from './moments.ts';

const halvings = 40;
/** Places that are looked at on the way, before the halving. */
const strides = 48;
/** How far out and in one looks, as a share of the present distance. */
const [nearest, farthest] = [0.1, 100];

/** Light per lumen on a surface from a lamp moved level toward or away from it, its height and aim kept; no shadows. */
const luxAt = (
  source: Extract<Source, { kind: 'lamp' }>,
  surface: SurfacePoint,
  from: Moment,
  share: number,
): number => {
  const { place } = surface;
  const move = (axis: 0 | 2) => place[axis] + (from.position[axis] - place[axis]) * share;
  const position: Vec3 = [move(0), from.position[1], move(2)];
  return openLux(source.emitter, poseToward(position, from.aim), surface);
};

/**
 * How far from its target a lamp must stand to give so many times its present light: moved level along the line between
 * them, at its height, aim and beam kept. Its size counts, so that a panel close by is not taken for a point; what may
 * stand in the new way is not looked at. Of several places the one nearest to the present is taken: under a lamp held
 * high the light first rises and then falls on the way in.
 *
 * @returns metres from lamp to target; null when no place from a tenth to a hundred times as far does it
 */
export const distanceForLight = (
  source: Extract<Source, { kind: 'lamp' }>,
  surface: SurfacePoint,
  from: Moment,
  ratio: number,
): number | null => {
  const wanted = ratio * luxAt(source, surface, from, 1);
  if (!(wanted > 0)) return null;
  const isBack = ratio < 1;
  const isThere = (share: number): boolean => {
    const lux = luxAt(source, surface, from, share);
    return isBack ? lux <= wanted : lux >= wanted;
  };
  const share = (stride: number): number => (isBack ? farthest : nearest) ** (stride / strides);
  let stride = 1;
  while (stride <= strides && !isThere(share(stride))) stride++;
  if (stride > strides) return null;
  let [short, there] = [share(stride - 1), share(stride)];
  for (let n = 0; n < halvings; n++) {
    const middle = Math.sqrt(short * there);
    if (isThere(middle)) there = middle;
    else short = middle;
  }
  const [dx, dz] = [from.position[0] - surface.place[0], from.position[2] - surface.place[2]];
  return Math.hypot(dx * there, from.position[1] - surface.place[1], dz * there);
};
