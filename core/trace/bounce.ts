import type { Triple } from '../colour/matrix.ts';
import { add, basisAround, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import type { Stage } from '../world/stage.ts';
import type { Source, World } from '../world/world.ts';
import { irradianceSample, type SampleNumbers } from './irradiance.ts';
import { type SurfacePoint, surfaceAlong } from './surface-point.ts';

/** How many times light is followed from surface to surface. */
export type Bounces = World['bounces'];

/** The random numbers of one bounced sample, for each bounce: the way to the farther surface, and light there. */
export type BounceNumbers = readonly (SampleNumbers & { readonly way: readonly [number, number] })[];

/** A direction over a surface, more often the nearer to its normal: density cos / pi. */
const cosineDirection = (normal: Vec3, [u, v]: readonly [number, number]): Vec3 => {
  const { first, second } = basisAround(normal);
  const r = Math.sqrt(u);
  const around = add(scale(first, r * Math.cos(2 * Math.PI * v)), scale(second, r * Math.sin(2 * Math.PI * v)));
  return normalize(add(scale(normal, Math.sqrt(Math.max(1 - u, 0))), around));
};

const times = (a: Triple, b: Triple): Triple => [a[0] * b[0], a[1] * b[1], a[2] * b[2]];

/**
 * One sample of the luminance that a surface sends on of light that came by way of other surfaces, per unit strength of
 * the source, linear RGB. Directions are drawn in proportion to the cosine, so that the irradiance of the bounce is pi
 * times the luminance met; light at the farther surface is that of `irradianceSample`.
 */
export const bounceSample = (
  stage: Stage,
  source: Source,
  surface: SurfacePoint,
  bounces: Bounces,
  numbers: BounceNumbers,
): Triple => {
  let sum: Triple = [0, 0, 0];
  let reflected = surface.reflectance;
  let from = surface;
  for (const number of numbers.slice(0, bounces)) {
    const next = surfaceAlong(stage, from.shadowOrigin, cosineDirection(from.normal, number.way));
    if (!next) break;
    reflected = times(reflected, next.reflectance);
    const light = irradianceSample(stage, source, next, number) / Math.PI;
    sum = [sum[0] + reflected[0] * light, sum[1] + reflected[1] * light, sum[2] + reflected[2] * light];
    from = next;
  }
  return sum;
};
