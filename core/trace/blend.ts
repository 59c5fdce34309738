import { blendEntries } from '../setup/blend-entries.ts';
import type { Scheme } from '../setup/schema/setup.ts';
import type { World, WorldFrame } from '../world/world.ts';
import { feathered, featherSigma } from './feather.ts';
import type { PictureSize } from './layer.ts';
import { maskOf, traceMask } from './mask.ts';
import { tracePicture } from './picture.ts';

export type BlendMode = Scheme['blend']['mode'];

/** A frame's linear picture in a blend. */
export interface BlendPart {
  /** Three numbers a pixel, as `mixLayers` gives them. */
  readonly picture: Float64Array;
  readonly weight: number;
  /** Share of each pixel that it counts for; null = everywhere. */
  readonly mask: Float64Array | null;
}

/**
 * Several frames as one picture, three numbers a pixel. `lighten` keeps the brighter of each channel; `add` sums; `average`
 * is the mean by weight and mask, so that a place which only one frame covers is as bright as in that frame. Black where no
 * frame counts.
 */
export const blendPictures = (parts: readonly BlendPart[], mode: BlendMode): Float64Array => {
  const result = new Float64Array(parts[0]?.picture.length ?? 0);
  result.forEach((_, i) => {
    const pixel = Math.floor(i / 3);
    const shares = parts.map(({ weight, mask }) => weight * (mask ? (mask[pixel] as number) : 1));
    const values = parts.map(({ picture }, p) => (picture[i] as number) * (shares[p] as number));
    const sum = values.reduce((total, v) => total + v, 0);
    const share = shares.reduce((total, v) => total + v, 0);
    result[i] = mode === 'lighten' ? Math.max(...values) : mode === 'add' ? sum : share > 0 ? sum / share : 0;
  });
  return result;
};

/** A scheme's blend by the reference estimator. */
export const traceBlend = (world: World, scheme: Scheme, sensorPixelsWide: number, size: PictureSize): Float64Array => {
  const pictures = new Map<WorldFrame, Float64Array>();
  const parts = blendEntries(scheme).flatMap((entry): BlendPart[] => {
    const frame = world.frames.find(({ id }) => id === entry.frame.id);
    if (!frame) return [];
    const picture = pictures.get(frame) ?? tracePicture(world, frame, size);
    pictures.set(frame, picture);
    const mask = maskOf(entry, world.stage);
    const shares = mask && traceMask(world.stage, frame.view, mask, size);
    const sigma = featherSigma(entry.featherPixels / sensorPixelsWide, size.width);
    return [{ picture, weight: entry.weight, mask: shares && feathered(shares, size, sigma) }];
  });
  return blendPictures(parts, scheme.blend.mode);
};
