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

/** How much of a pixel frames cover together, and what that makes of each way of blending. */
const sharesAt = (parts: readonly BlendPart[], pixel: number) => {
  const masks = parts.map(({ mask }) => (mask ? (mask[pixel] as number) : 1));
  const [covered, most] = [masks.reduce((sum, v) => sum + v, 0), Math.max(...masks)];
  const weight = parts.reduce((sum, part, i) => sum + part.weight * (masks[i] as number), 0);
  return { masks, weight, lightenFactor: most > 0 ? Math.min(covered, 1) / most : 0 };
};

/**
 * Several frames as one picture, three numbers a pixel. `lighten` keeps the brighter of each channel; `add` sums; `average`
 * is the mean by weight and mask, so that a place which only one frame covers is as bright as in that frame. Where soft
 * edges of lightened frames meet, each counts as if it covered the place alone, so that there is no dark seam between a sky
 * and its land. Black where no frame counts.
 *
 * @param parts at least one
 */
export const blendPictures = (parts: readonly BlendPart[], mode: BlendMode): Float64Array => {
  const result = new Float64Array((parts[0] as BlendPart).picture.length);
  for (let pixel = 0; pixel < result.length / 3; pixel++) {
    const { masks, weight, lightenFactor } = sharesAt(parts, pixel);
    for (const c of [0, 1, 2]) {
      const i = pixel * 3 + c;
      const values = parts.map((part, p) => (part.picture[i] as number) * part.weight * (masks[p] as number));
      const sum = values.reduce((total, v) => total + v, 0);
      result[i] =
        mode === 'lighten' ? Math.max(...values) * lightenFactor : mode === 'add' ? sum : weight > 0 ? sum / weight : 0;
    }
  }
  return result;
};

/** A scheme's blend by the reference estimator. */
export const traceBlend = (world: World, scheme: Scheme, sensorPixelsWide: number, size: PictureSize): Float64Array => {
  const pictures = new Map<WorldFrame, Float64Array>();
  const parts = blendEntries(scheme).map((entry): BlendPart => {
    const frame = world.frames.find(({ id }) => id === entry.frame.id) as WorldFrame;
    const picture = pictures.get(frame) ?? tracePicture(world, frame, size);
    pictures.set(frame, picture);
    const mask = maskOf(entry, world.stage);
    const shares = mask && traceMask(world.stage, frame.view, mask, size);
    const sigma = featherSigma(entry.featherPixels / sensorPixelsWide, size.width);
    return { picture, weight: entry.weight, mask: shares && feathered(shares, size, sigma) };
  });
  return blendPictures(parts, scheme.blend.mode);
};
