import type { Triple } from '../colour/matrix.ts';
import { dot, type Vec3 } from '../geometry/vec.ts';
import type { Stage } from '../world/stage.ts';
import type { Source, World } from '../world/world.ts';
import type { SampleNumbers } from './arrival.ts';
import { surfaceLuminance } from './lit-surface.ts';
import { evenShare, evenShareAllRound, fresnel, sheenNormal, wayOn } from './sheen.ts';
import { cosineDirection } from './sky-arrival.ts';
import { type SurfacePoint, surfaceAlong } from './surface-point.ts';

/** How many times light is followed from surface to surface. */
export type Bounces = World['bounces'];

/** The random numbers of one bounced sample, for each bounce: the way to the farther surface, and light there. */
export type BounceNumbers = readonly (SampleNumbers & {
  readonly way: readonly [number, number];
  /** Which side of cloth the way leaves from. */
  readonly side?: number;
})[];

/** The random numbers with which the eye's own ray goes on from a sheen. */
export interface SheenNumbers {
  readonly way: readonly [number, number];
  /** Whether it goes on, or the surface's even part counts. */
  readonly choice: number;
}

const times = (a: Triple, b: Triple): Triple => [a[0] * b[0], a[1] * b[1], a[2] * b[2]];
const scaled = (a: Triple, factor: number): Triple => [a[0] * factor, a[1] * factor, a[2] * factor];

/** A surface that the eye sees, at last or in a sheen, and what its luminance counts for. */
interface Seen {
  readonly surface: SurfacePoint;
  readonly weight: Triple;
}

/**
 * Of a glossy surface either what shows in its sheen or its own even part, each as often as it is likely to matter; it
 * counts for the more in return. A mirror in a mirror shows its even part.
 */
const seenInSheen = (stage: Stage, surface: SurfacePoint, { way, choice }: SheenNumbers): Seen | null => {
  const { sheen, transmittance } = surface.finish;
  if (!sheen) return { surface, weight: [1, 1, 1] };
  const cosEye = dot(sheenNormal(surface), surface.toEye);
  const mirrored = Math.max(...fresnel(sheen, cosEye));
  const even = evenShareAllRound(sheen, cosEye) * (Math.max(...surface.reflectance) + transmittance);
  const odds = mirrored / Math.max(mirrored + even, 1e-9);
  if (choice >= odds) return { surface, weight: scaled([1, 1, 1], 1 / (1 - odds)) };
  const on = wayOn(surface, sheen, way);
  const next = on && surfaceAlong(stage, on.ray.origin, on.ray.direction);
  return next && { surface: next, weight: scaled(on.weight, 1 / odds) };
};

/** Where the eye's ray is followed to from a surface that returns or lets through light evenly. */
interface EvenWay {
  readonly origin: Vec3;
  readonly direction: Vec3;
  /** What the luminance met there counts for. */
  readonly weight: Triple;
}

/** Drawn by the cosine on the side looked at, or on the far side of cloth, as often as each sends light on. */
const evenWay = (surface: SurfacePoint, way: readonly [number, number], side: number): EvenWay => {
  const { far, finish, reflectance } = surface;
  const { sheen, transmittance } = finish;
  const through = far ? transmittance / Math.max(transmittance + Math.max(...reflectance), 1e-9) : 0;
  const isThrough = far !== null && side < through;
  const { normal, shadowOrigin: origin } = isThrough ? far : surface;
  const direction = cosineDirection(normal, ...way);
  const share: Triple = isThrough
    ? scaled([1, 1, 1], transmittance / through)
    : far
      ? scaled(reflectance, 1 / (1 - through))
      : reflectance;
  if (!sheen) return { origin, direction, weight: share };
  const cosEye = dot(sheenNormal(surface), surface.toEye);
  return { origin, direction, weight: scaled(share, evenShare(sheen, cosEye, dot(normal, direction))) };
};

const middle: SheenNumbers = { way: [0.5, 0.5], choice: 0 };

/**
 * One sample of the luminance that a surface sends on of light that came by way of other surfaces, per unit strength of
 * the source, linear RGB. Directions are drawn in proportion to the cosine, so that the irradiance of the bounce is pi
 * times the luminance met; light at the farther surface is that of `surfaceLuminance`, its even part alone: light that a
 * sheen or a mirror throws onto other things is left out. A sheen that the eye sees shows bounced light, cloth lets it
 * through at each bounce.
 *
 * @param sheenNumbers where the eye's ray goes on from a glossy surface
 */
export const bounceSample = (
  stage: Stage,
  source: Source,
  surface: SurfacePoint,
  bounces: Bounces,
  numbers: BounceNumbers,
  sheenNumbers: SheenNumbers = middle,
): Triple => {
  let sum: Triple = [0, 0, 0];
  const seen = seenInSheen(stage, surface, sheenNumbers);
  if (!seen) return sum;
  let { surface: from, weight: reflected } = seen;
  for (const number of numbers.slice(0, bounces)) {
    const on = evenWay(from, number.way, number.side ?? 0.5);
    const next = surfaceAlong(stage, on.origin, on.direction);
    if (!next) break;
    reflected = times(reflected, on.weight);
    const light = times(reflected, surfaceLuminance(stage, source, next, number, 'none'));
    sum = [sum[0] + light[0], sum[1] + light[1], sum[2] + light[2]];
    from = next;
  }
  return sum;
};
