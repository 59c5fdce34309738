import { viewDirection } from '../camera/camera-view.ts';
import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { World } from '../world/world.ts';
import { percentile } from './percentile.ts';
import type { SmallPicture } from './small-picture.ts';

/** Sky in less of the picture than this share is a chink, no sky. */
const leastShare = 0.02;

/** Pixels of a small picture where the sky is seen, by world: all its frames look the same way, and it takes a ray each. */
const known = new WeakMap<World, readonly number[]>();

const skyPixels = (world: World, { frame, size }: SmallPicture): readonly number[] => {
  const before = known.get(world);
  if (before) return before;
  const pixels = Array.from({ length: size.width * size.height }, (_, i) => i).filter((i) => {
    const [x, y] = [i % size.width, Math.floor(i / size.width)];
    const direction = viewDirection(frame.view, (x + 0.5) / size.width, (y + 0.5) / size.height);
    return !surfaceAlong(world.stage, frame.view.position, direction);
  });
  known.set(world, pixels);
  return pixels;
};

/**
 * Level of the sky in a frame, stops from mid-grey: the median of all that is seen of it; null where there is hardly any.
 *
 * @param picture one of `smallPictures(world)`
 */
export const skyLevel = (world: World, picture: SmallPicture): number | null => {
  const { linear, size } = picture;
  const pixels = skyPixels(world, picture);
  if (pixels.length < leastShare * size.width * size.height) return null;
  const levels = pixels.map((i) => luminanceOfLinearSrgb([...linear.subarray(3 * i, 3 * i + 3)] as unknown as Triple));
  const median = percentile(levels, 0.5);
  return median > 0 ? stopsFromRatio(median) : null;
};
