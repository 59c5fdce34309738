import { planckLinearSrgb } from '../colour/adaptation.ts';
import type { Triple } from '../colour/matrix.ts';

/**
 * Temperature of a black body with a star's B - V. Valid from -0.4 to 2; held there outside.
 * Source: Ballesteros 2012, EPL 97, 34008.
 */
export const kelvinFromBMinusV = (bMinusV: number): number => {
  const held = Math.min(Math.max(bMinusV, -0.4), 2);
  return 4600 * (1 / (0.92 * held + 1.7) + 1 / (0.92 * held + 0.62));
};

/** Colour of a star outside the air: linear sRGB of luminance 1, from its B - V. All three numbers are positive. */
export const starColour = (bMinusV: number): Triple => planckLinearSrgb(kelvinFromBMinusV(bMinusV));
