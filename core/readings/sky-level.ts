import { viewDirection } from '../camera/camera-view.ts';
import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { World } from '../world/world.ts';
import type { SmallPicture } from './clipped-reading.ts';
import { percentile } from './percentile.ts';

/** Sky in less of the picture than this share is a chink, no sky. */
const leastShare = 0.02;

/** Level of the sky in a frame, stops from mid-grey: the median of all that is seen of it; null where there is hardly any. */
export const skyLevel = ({ stage }: World, { frame, linear, size }: SmallPicture): number | null => {
  const levels: number[] = [];
  for (let y = 0; y < size.height; y++)
    for (let x = 0; x < size.width; x++) {
      const direction = viewDirection(frame.view, (x + 0.5) / size.width, (y + 0.5) / size.height);
      if (surfaceAlong(stage, frame.view.position, direction)) continue;
      const at = 3 * (y * size.width + x);
      levels.push(luminanceOfLinearSrgb([...linear.subarray(at, at + 3)] as unknown as Triple));
    }
  if (levels.length < leastShare * size.width * size.height) return null;
  const median = percentile(levels, 0.5);
  return median > 0 ? stopsFromRatio(median) : null;
};
