import type { Ray } from '../camera/camera-view.ts';
import { seenEmitter } from '../photometry/seen-emitter.ts';
import { poseAt, type Source } from '../world/world.ts';
import type { SurfacePoint } from './surface-point.ts';

/** Luminance of the even sky per lux on level ground. */
const skyLuminancePerLux = 1 / Math.PI;

/**
 * What a ray sees of the source itself: the bare lamp in front of any surface, or the sky where there is none. The moon is
 * not drawn.
 *
 * @param density per steradian of the ray's direction, where it was drawn from a lobe that spots of the lamp are reckoned
 *   with too: both share the lamp (see `SheenBy`). Infinity for a ray that sees it alone, null for one that must not
 */
export const bareLuminance = (
  source: Source,
  { origin, direction }: Ray,
  surface: SurfacePoint | null,
  time: number,
  density: number | null,
): number => {
  if (source.kind === 'sky') return surface ? 0 : skyLuminancePerLux;
  if (source.kind === 'moon' || density === null) return 0;
  const seen = seenEmitter(source.emitter, poseAt(source, time), origin, direction);
  if (!seen || (surface && seen.t >= surface.distance)) return 0;
  if (density === Number.POSITIVE_INFINITY) return seen.luminancePerLumen;
  return (seen.luminancePerLumen * density * seen.areaAcross) / (density * seen.areaAcross + seen.t ** 2);
};
