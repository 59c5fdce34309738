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

/** What somebody who holds a lamp sends of moon and sky in a frame, in mid-greys, per channel; null where nobody is drawn. */
export const holderWeight = (frame: WorldFrame, light: WorldLight): Triple | null => {
  if (light.source.kind !== 'lamp' || !light.source.holder?.isDrawn) return null;
  const factor = light.seconds * midGreyRatioPerLuminanceSecond(frame.exposure);
  const [r, g, b] = light.holderLuminance ?? [0, 0, 0];
  return [r * factor, g * factor, b * factor];
};

/**
 * How much of a light's time the holders of a frame's lamps are there, one share a light in order, 0 to 1: what each takes
 * of it where they stand before the rest. Lamps held by hand are on while only their own holder is there, and have that in
 * their layer already.
 */
export const timeWithHolders = (frame: WorldFrame, light: WorldLight): number[] =>
  frame.lights.map((other) => {
    const isHeld = holderWeight(frame, light) !== null;
    if (isHeld || holderWeight(frame, other) === null || light.seconds <= 0) return 0;
    const together = Math.min(light.lit[1], other.lit[1]) - Math.max(light.lit[0], other.lit[0]);
    return Math.min(Math.max(together, 0) / light.seconds, 1);
  });

/** Weighted sum of layers: light on the sensor, linear RGB in mid-grey ratios, three numbers a pixel. */
export const sumLayers = (frame: WorldFrame, { layers, covers }: TracedLayers): Float64Array => {
  const sum = new Float64Array(layers[0]?.length ?? 0);
  const add = (weight: Triple, value: (p: number) => number) => {
    for (let p = 0; p < sum.length; p++) sum[p] = (sum[p] as number) + value(p) * (weight[p % 3] as number);
  };
  frame.lights.forEach((light, i) => {
    const [cover, weight] = [covers[i], holderWeight(frame, light)];
    if (cover && weight) add(weight, (p) => cover[Math.floor(p / 3)] as number);
    const shares = timeWithHolders(frame, light);
    const isOpen = (pixel: number) =>
      Math.max(1 - shares.reduce((all, share, k) => all + share * (covers[k]?.[pixel] ?? 0), 0), 0);
    const layer = layers[i] as Layer;
    add(layerWeight(frame, light), (p) => (layer[p] as number) * isOpen(Math.floor(p / 3)));
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
