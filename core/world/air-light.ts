import { dot, type Vec3 } from '../geometry/vec.ts';
import { domeLightOf } from '../sky/dome-of.ts';
import type { Source } from './source.ts';

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

/**
 * Luminance of haze itself in the light of moon or sky, per lux, over a way through it: what it takes of the view it gives
 * back of what lights it. Moonlight is scattered once, and counts as it is over the haze. A sky gives its mean luminance, as
 * if the ground under the haze were as bright, so that an even sky looks the same through any haze: our choice, as ground
 * in haze is lit too, but darker. No shadows in it.
 *
 * @param through share of the view that gets through
 */
export const airLight = (source: Source, direction: Vec3, through: number): number => {
  if (source.kind === 'moon') return (1 - through) * scatterPhase(dot(source.toward, direction));
  const luxAllRound = source.kind === 'sky' ? 2 : source.kind === 'dome' ? domeLightOf(source.of).luxAllRound : 0;
  return ((1 - through) * luxAllRound) / (2 * Math.PI);
};
