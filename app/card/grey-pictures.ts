import { encode } from 'fast-png';
import type { PicturePngs } from './pdf-of-pages.ts';

/** Eight-bit sRGB pixels, three or four numbers each. */
export interface ColourPixels {
  readonly width: number;
  readonly height: number;
  readonly data: ArrayLike<number>;
}

/** The grey that the brightest hundredth of the lit picture is printed with, and how far a picture is lifted at most. */
const brightGrey = 235;
const mostLift = 2.5;

/** Luma of each pixel, Rec. 709 weights. */
const greysOf = ({ width, height, data }: ColourPixels): Float64Array => {
  const each = data.length / (width * height);
  return Float64Array.from(
    { length: width * height },
    (_, p) =>
      0.2126 * (data[p * each] as number) +
      0.7152 * (data[p * each + 1] as number) +
      0.0722 * (data[p * each + 2] as number),
  );
};

/** How much a night picture is lifted so that paper shows it: its brightest hundredth comes out light. */
const liftOf = (greys: Float64Array): number => {
  const bright = Float64Array.from(greys).sort()[Math.floor(greys.length * 0.99)] ?? 0;
  return Math.min(Math.max(brightGrey / Math.max(bright, 1), 1), mostLift);
};

/**
 * The two pictures of a card in greys, as PNG of one channel. Both are lifted alike, as far as the lit one bears, so that
 * one sees on paper what lamps add.
 */
export const greyPictures = (lit: ColourPixels, unlit: ColourPixels): Required<PicturePngs> => {
  const [litGreys, unlitGreys] = [greysOf(lit), greysOf(unlit)];
  const lift = liftOf(litGreys);
  const png = ({ width, height }: ColourPixels, greys: Float64Array) =>
    encode({ width, height, channels: 1, depth: 8, data: Uint8ClampedArray.from(greys, (grey) => grey * lift) });
  return { lit: png(lit, litGreys), unlit: png(unlit, unlitGreys) };
};
