import { midGreyRatioPerLuminanceSecond } from '../camera/exposure.ts';
import { displayFromMidGreyRatio, type Response } from '../camera/response.ts';
import type { Triple } from '../colour/matrix.ts';
import { encodeSrgb } from '../colour/srgb.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { type Layer, type PictureSize, type TracedLayers, traceWithCovers } from './layer.ts';
import { recordPixel } from './record-pixel.ts';
import { pixelNumber } from './sequence.ts';

/** Weight of a light's layer in a frame: strength x seconds x exposure, per channel; a layer times this is in mid-greys. */
export const layerWeight = (frame: WorldFrame, light: WorldLight): Triple => {
  const factor = light.seconds * midGreyRatioPerLuminanceSecond(frame.exposure);
  return [light.strength[0] * factor, light.strength[1] * factor, light.strength[2] * factor];
};

/** First of the six dimensions of the hash that a frame's noise is drawn from, apart from those of the samples. */
export const noiseDimensionOf = (frame: number): number => 32 + 6 * frame;

/** What the cover of somebody who holds a lamp counts for in a frame. */
export interface CoverWeight {
  /** What they send of moon and sky, in mid-greys, per channel. */
  readonly weight: Triple;
  /** Share of the exposure that they stay, at most 1: what they take from lights behind. */
  readonly share: number;
}

/**
 * How a light's holder counts where they stand before the rest. Lamps held by hand are on while only their own holder is
 * there, and have that in their layer already; moon, sky and lamps on stands shine on behind all holders.
 *
 * @returns null for those
 */
export const coverOf = (frame: WorldFrame, light: WorldLight): CoverWeight | null => {
  if (light.source.kind !== 'lamp' || !light.source.holder) return null;
  const factor = light.seconds * midGreyRatioPerLuminanceSecond(frame.exposure);
  const [r, g, b] = light.holderLuminance ?? [0, 0, 0];
  // moon and sky are there for all of the exposure
  const exposureSeconds = Math.max(...frame.lights.map(({ seconds }) => seconds));
  const share = exposureSeconds > 0 ? Math.min(light.seconds / exposureSeconds, 1) : 0;
  return { weight: [r * factor, g * factor, b * factor], share };
};

/** Weighted sum of layers: light on the sensor, linear RGB in mid-grey ratios, three numbers a pixel. */
const sumLayers = (frame: WorldFrame, { layers, covers }: TracedLayers): Float64Array => {
  const sum = new Float64Array(layers[0]?.length ?? 0);
  const open = new Float64Array(sum.length / 3).fill(1);
  const add = (weight: Triple, value: (p: number) => number) => {
    for (let p = 0; p < sum.length; p++) sum[p] = (sum[p] as number) + value(p) * (weight[p % 3] as number);
  };
  const counts = frame.lights.map((light) => coverOf(frame, light));
  counts.forEach((count, i) => {
    const cover = covers[i];
    if (!cover || !count) return;
    for (let p = 0; p < open.length; p++)
      open[p] = Math.max((open[p] as number) - count.share * (cover[p] as number), 0);
    add(count.weight, (p) => cover[Math.floor(p / 3)] as number);
  });
  frame.lights.forEach((light, i) => {
    const layer = layers[i] as Layer;
    const isSeen = (p: number) => (counts[i] ? 1 : (open[Math.floor(p / 3)] as number));
    add(layerWeight(frame, light), (p) => (layer[p] as number) * isSeen(p));
  });
  return sum;
};

/** What the frame's file holds: linear RGB relative to mid-grey (1 = mid-grey), three numbers a pixel, at most 7.8. */
export const mixLayers = (frame: WorldFrame, traced: TracedLayers, { width, height }: PictureSize): Float64Array => {
  const picture = sumLayers(frame, traced);
  const firstDimension = noiseDimensionOf(frame.development.noise?.frame ?? 0);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * 3;
      const light = [...picture.subarray(at, at + 3)] as unknown as Triple;
      const place = [(x + 0.5) / width, (y + 0.5) / height] as const;
      const number = (dim: number) => pixelNumber(x, y, firstDimension + dim);
      const numbers = (channel: number) => [number(2 * channel), number(2 * channel + 1)] as const;
      picture.set(recordPixel(light, frame.development, frame.view, place, width, numbers), at);
    }
  return picture;
};

/** A frame's linear picture by the reference estimator. */
export const tracePicture = (world: World, frame: WorldFrame, size: PictureSize): Float64Array => {
  const sources = frame.lights.map(({ source }) => source);
  return mixLayers(frame, traceWithCovers(world.stage, frame.view, sources, size, world.bounces), size);
};

/** Eight-bit sRGB through the camera's response, three bytes a pixel. */
export const developPicture = (linear: Float64Array, response: Response): Uint8Array =>
  Uint8Array.from(linear, (v) => Math.round(255 * encodeSrgb(displayFromMidGreyRatio(v, response))));
