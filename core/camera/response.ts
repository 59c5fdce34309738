import { saturationRatio } from './exposure.ts';

/** Display value of mid-grey before encoding: 18 % (sRGB 118; ISO 12232 standard output sensitivity). */
export const midGreyLinear = 0.18;

/** How highlights reach white: rolled off, or straight. */
export type Response = 'soft' | 'plain';

/** Where the shoulder starts, and what comes out at sensor saturation (7.8 x mid-grey). */
const shoulderStart = 0.6;
const saturationLinear = midGreyLinear * saturationRatio;

/**
 * Display-linear value from exposure relative to mid-grey (1 = mid-grey).
 * - plain: straight, white from 5.6 x mid-grey (2.47 stops) on, though the sensor holds 0.49 stop more;
 * - soft: straight up to 0.6, then a cubic that joins with the same slope and reaches display white flatly where the
 *   sensor saturates, so that no highlight is called white before it is lost.
 * The shader in `develop.frag.ts` has the same curves; a browser test holds the two together.
 */
export const displayFromMidGreyRatio = (midGreyRatio: number, response: Response = 'soft'): number => {
  const v = Math.max(midGreyRatio, 0) * midGreyLinear;
  if (response === 'plain') return Math.min(v, 1);
  if (v <= shoulderStart) return v;
  const range = saturationLinear - shoulderStart;
  const s = Math.min((v - shoulderStart) / range, 1);
  // cubic with f(0) = 0.6, f(1) = 1, slope 1 at the start, 0 at the end
  const rise = 1 - shoulderStart;
  const a = range - 2 * rise;
  const b = 3 * rise - 2 * range;
  return shoulderStart + s * (range + s * (b + s * a));
};
