import type { GelFilter } from './gel.ts';
import type { Triple } from './matrix.ts';
import { luminanceOfLinearSrgb } from './srgb.ts';

/**
 * A gel of one colour: lets each channel of linear sRGB through as the colour says (0 to 1 each), so that its
 * transmission is the luminance of that colour. Exact for white light of D65; on a warm lamp the true share is another.
 */
export const gelFromColour = (linearSrgb: Triple): GelFilter => ({
  shiftMired: 0,
  transmission: luminanceOfLinearSrgb(linearSrgb),
  colour: linearSrgb,
});
