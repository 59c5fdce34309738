import type { Triple } from '../colour/matrix.ts';
import { type ThroughSheen, throughSheen } from '../photometry/through-sheen.ts';
import type { Finish } from '../setup/schema/setup.ts';

/** A sheen over a surface: a microfacet mirror. */
export interface Sheen {
  /** Share reflected straight on, linear RGB. */
  readonly normalReflectance: Triple;
  /** Roughness of the GGX distribution; 0 = a mirror. */
  readonly alpha: number;
  /** Of a clear face; null = metal. */
  readonly refractiveIndex: number | null;
  /** Share that gets through to the even part, and out again; null = metal, which has none. */
  readonly through: ThroughSheen | null;
}

/** A finish as light meets it. */
export interface StageFinish {
  /** Share returned evenly, linear RGB; of metal what it returns in its sheen, which readings take for even. */
  readonly reflectance: Triple;
  /** Share let through evenly. */
  readonly transmittance: number;
  /** null = matt. */
  readonly sheen: Sheen | null;
}

const tripleOf = (reflectance: Finish['reflectance']): Triple =>
  typeof reflectance === 'number' ? [reflectance, reflectance, reflectance] : reflectance;

/** Smoothest sheen that is not a mirror: sharper ones would be missed between samples. */
const leastAlpha = 0.01;

/** Share that a clear face reflects straight on: ((n - 1) / (n + 1))^2, Fresnel's equations at normal incidence. */
export const normalReflectanceOf = (refractiveIndex: number): number =>
  ((refractiveIndex - 1) / (refractiveIndex + 1)) ** 2;

/**
 * A finish of the document in the terms of light. Roughness is the square of what gloss lacks, which people find even
 * steps.
 */
export const stageFinishOf = ({ reflectance, transmittance, gloss, refractiveIndex, metal }: Finish): StageFinish => {
  const even = tripleOf(reflectance);
  const clear = normalReflectanceOf(refractiveIndex);
  const alpha = gloss >= 1 ? 0 : Math.max((1 - gloss) ** 2, leastAlpha);
  if (metal) {
    const sheen = { normalReflectance: even, alpha, refractiveIndex: null, through: null };
    return { reflectance: even, transmittance, sheen };
  }
  if (gloss === 0 || clear === 0) return { reflectance: even, transmittance, sheen: null };
  const through = throughSheen(alpha, refractiveIndex);
  return {
    reflectance: even,
    transmittance,
    sheen: { normalReflectance: [clear, clear, clear], alpha, refractiveIndex, through },
  };
};
