import type { Ray } from '../camera/camera-view.ts';
import type { Air } from '../world/air.ts';

/** Share of light that gets through so much haze straight. Beer and Lambert. */
export const throughAir = (air: Air | null, metres: number): number =>
  air ? Math.exp(-air.scatterPerMetre * metres) : 1;

/** Way through haze that a level look takes at most, metres: the earth is round, and banks end. */
export const farthestMetres = 20_000;

/** How far a ray goes in the haze when it meets nothing, metres. */
export const metresInAir = ({ topMetres }: Air, { origin, direction }: Ray): number => {
  const up = direction[1];
  if (origin[1] >= topMetres) return 0;
  return up > 1e-6 ? Math.min((topMetres - origin[1]) / up, farthestMetres) : farthestMetres;
};

/** How strongly haze scatters forward: mean cosine of the angle, as in aerosol (sky.md 4.7). */
export const forwardness = 0.7;

/**
 * Share of scattered light that goes on at an angle, per steradian; over the sphere it sums up to 1. Henyey and Greenstein
 * 1941.
 *
 * @param cosine of the angle between the ways before and after: 1 = straight on
 */
export const scatterPhase = (cosine: number): number => {
  const g = forwardness;
  return (1 - g * g) / (4 * Math.PI * (1 + g * g - 2 * g * cosine) ** 1.5);
};
