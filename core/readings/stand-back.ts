import { anyHit } from '../geometry/cast-ray.ts';
import { length, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { poseToward } from '../photometry/emitter.ts';
import { openLux } from '../photometry/open-light.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import type { LampPlace, Source } from '../world/world.ts';

const halvings = 40;
/** Places that are looked at on the way, before the halving. */
const strides = 48;
/** How far out and in one looks, as a share of the present distance. */
const [nearest, farthest] = [0.1, 100];

type LampSource = Extract<Source, { kind: 'lamp' }>;

/** Where a lamp stands when it is moved level to a share of its distance from its aim, its height kept. */
const placeAt = ({ position, aim }: LampPlace, share: number): Vec3 => {
  const move = (axis: 0 | 2) => aim[axis] + (position[axis] - aim[axis]) * share;
  return [move(0), position[1], move(2)];
};

/** Level distance of a lamp from what it is aimed at, metres. */
export const levelDistance = ({ position, aim }: LampPlace): number =>
  Math.hypot(position[0] - aim[0], position[2] - aim[2]);

/**
 * How far from its aim, level, a lamp must stand to give its target so many times its present light: moved along the line
 * between them, its height, aim and beam kept, as one walks. Its size counts, so that a panel close by is not taken for a
 * point, and so does the angle, which changes on the way. Of several places the one nearest to the present is taken:
 * under a lamp held high the light first rises and then falls on the way in.
 *
 * @returns metres; null when no place from a tenth to a hundred times as far does it, or something stands in its way
 */
export const distanceForLight = (
  stage: Stage,
  source: LampSource,
  surface: SurfacePoint,
  from: LampPlace,
  ratio: number,
): number | null => {
  const now = levelDistance(from);
  // straight over its aim there is no way to walk
  if (now < 1e-3) return null;
  const luxAt = (share: number) => openLux(source.emitter, poseToward(placeAt(from, share), from.aim), surface);
  const wanted = ratio * luxAt(1);
  if (!(wanted > 0)) return null;
  const isBack = ratio < 1;
  const isThere = (share: number): boolean => {
    const lux = luxAt(share);
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
  const way = sub(placeAt(from, there), surface.shadowOrigin);
  const isHidden = anyHit(stage.tree, surface.shadowOrigin, normalize(way), length(way) * (1 - 1e-4));
  // beyond the turn of the light the first place met may lie far past the ratio asked for
  const isRight = Math.abs(luxAt(there) / wanted - 1) < 0.05;
  return isHidden || !isRight ? null : now * there;
};
