import type { DrawnPicture } from '../../../core/trace/picture-order.ts';
import { bandOf, channelsOf, differenceBands, levelBands } from './stops-bands.ts';

/** What is darker than this in both pictures does not differ, mid-greys (twin: shaders/map.frag.ts). */
const floor = 0.002;
/** Pixels between the strokes over what is darker in a difference. */
const hatchPixels = 4;

const luminance = (linear: Float32Array, p: number): number =>
  0.2126 * (linear[3 * p] as number) + 0.7152 * (linear[3 * p + 1] as number) + 0.0722 * (linear[3 * p + 2] as number);

/** Bands of whole stops, as the map of the graphics card has them, without their numbers. */
const mapBytes = ({ width, height, linear, against }: DrawnPicture): Uint8ClampedArray<ArrayBuffer> => {
  const { first, colours } = against ? differenceBands : levelBands;
  const rgb = colours.map((colour) => channelsOf(colour).map((v) => Math.round(255 * v)));
  const bytes = new Uint8ClampedArray(width * height * 4);
  if (!linear) return bytes;
  for (let p = 0; p < width * height; p++) {
    const own = luminance(linear, p);
    const ratio = against ? Math.max(own, floor) / Math.max(luminance(against, p), floor) : Math.max(own, 1e-6);
    const band = bandOf(Math.log2(ratio));
    const colour = rgb[Math.min(Math.max(band - first, 0), colours.length - 1)] as number[];
    const isHatched = against !== null && band < 0 && ((p % width) + Math.floor(p / width)) % hatchPixels === 0;
    for (const c of [0, 1, 2]) bytes[4 * p + c] = (colour[c] as number) * (isHatched ? 0.72 : 1);
    bytes[4 * p + 3] = 255;
  }
  return bytes;
};

/** A picture that the processor drew, on a canvas of its own size; null where there is no canvas to be had. */
export const slowImage = (picture: DrawnPicture): HTMLCanvasElement | null => {
  const { width, height, bytes } = picture;
  const canvas = Object.assign(document.createElement('canvas'), { width, height });
  const context = canvas.getContext('2d', { alpha: false });
  if (!context) return null;
  context.putImageData(new ImageData(bytes ?? mapBytes(picture), width, height), 0, 0);
  return canvas;
};
