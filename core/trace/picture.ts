import { displayFromMidGreyRatio, type Response } from '../camera/response.ts';
import type { Triple } from '../colour/matrix.ts';
import { encodeSrgb } from '../colour/srgb.ts';
import type { World, WorldFrame } from '../world/world.ts';
import { type Layer, type PictureSize, type TracedLayers, traceWithCovers } from './layer.ts';
import { holderWeight, layerWeight, noiseDimensionOf, timeWithHolders } from './layer-weights.ts';
import { recordPixel } from './record-pixel.ts';
import { pixelNumber } from './sequence.ts';

/** Weighted sum of layers, of which there is at least one: light on the sensor, linear RGB in mid-grey ratios, three numbers a pixel. */
export const sumLayers = (frame: WorldFrame, { layers, covers }: TracedLayers): Float64Array => {
  const sum = new Float64Array((layers[0] as Layer).length);
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
