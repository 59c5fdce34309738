import { add, basisAround, dot, scale, type Vec3 } from '../geometry/vec.ts';
import { mirroredBy, mirroredShare, seenFacet } from './facets.ts';
import { clearFresnel } from './fresnel.ts';

/** Share of light that a sheen does not reflect, by the cosine of its angle. */
export interface ThroughSheen {
  /** At the cosines (i / 23)^2: close to each other where light grazes and the share changes fast. */
  readonly atRoots: readonly number[];
  /** The mean over light from all round, weighted with the cosine. */
  readonly mean: number;
}

/** Cosines that the share is kept for; a multiple of four, which is what a texel of the shaders holds. */
export const throughSheenSteps = 24;
const last = throughSheenSteps - 1;
const grid = 16;

/** Share of light from one direction that the facets reflect in all: the mean over a grid of drawn ones. */
const reflectedShare = (alpha: number, refractiveIndex: number, cos: number): number => {
  const normal: Vec3 = [0, 1, 0];
  // turns are counted from this side, so that both halves of them are alike
  const { first } = basisAround(normal);
  const toEye = add(scale(normal, cos), scale(first, Math.sqrt(1 - cos * cos)));
  let sum = 0;
  for (let i = 0; i < grid; i++)
    for (let j = 0; j < grid; j++) {
      const facet = seenFacet(alpha, normal, toEye, (i + 0.5) / (2 * grid), (j + 0.5) / grid);
      const cosWay = mirroredBy(facet, toEye)[1];
      if (cosWay > 0) sum += mirroredShare(alpha, cos, cosWay) * clearFresnel(refractiveIndex, dot(facet, toEye));
    }
  return sum / grid ** 2;
};

/** A share between the cosines that it is kept for. */
export const throughSheenAt = ({ atRoots }: ThroughSheen, cos: number): number => {
  const at = Math.sqrt(Math.min(Math.max(cos, 0), 1)) * last;
  const low = Math.min(Math.floor(at), last - 1);
  return (atRoots[low] as number) + ((atRoots[low + 1] as number) - (atRoots[low] as number)) * (at - low);
};

/** Mean over the hemisphere of what `throughSheenAt` gives: the integral of 4 t^3 times it over the cosine's root t. */
const meanOf = (table: ThroughSheen): number => {
  const steps = 64 * last;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const t = (i + 0.5) / steps;
    sum += 4 * t ** 3 * throughSheenAt(table, t * t);
  }
  return sum / steps;
};

const kept = new Map<string, ThroughSheen>();

/**
 * Share of light that gets through a clear sheen to what lies under it. Through a rough one more gets in where light grazes
 * than through a mirror, since some facets face it: wet soil is not black in raking light.
 *
 * @param alpha roughness, 0 = a mirror
 * @param refractiveIndex above 1
 */
export const throughSheen = (alpha: number, refractiveIndex: number): ThroughSheen => {
  const key = `${alpha} ${refractiveIndex}`;
  const known = kept.get(key);
  if (known) return known;
  const atRoots = Array.from({ length: throughSheenSteps }, (_, i) => {
    const cos = Math.max((i / last) ** 2, 1e-6);
    return 1 - (alpha > 0 ? reflectedShare(alpha, refractiveIndex, cos) : clearFresnel(refractiveIndex, cos));
  });
  const table = { atRoots, mean: meanOf({ atRoots, mean: 1 }) };
  // a slider dragged through many values must not fill the memory
  if (kept.size > 100) kept.clear();
  kept.set(key, table);
  return table;
};
