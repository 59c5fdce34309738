import type { Ray } from '../camera/camera-view.ts';
import type { Pose } from '../photometry/emitter.ts';
import { seenEmitter } from '../photometry/seen-emitter.ts';
import { type Air, throughAir } from '../world/air.ts';
import type { Source } from '../world/world.ts';
import type { SurfacePoint } from './surface-point.ts';

/** Luminance of the even sky per lux on level ground. */
const skyLuminancePerLux = 1 / Math.PI;

/**
 * What a ray sees of the source itself: the bare lamp in front of any surface, or an even sky where there is none. The moon
 * and the sky of an hour are seen by `skyPicture`. A lamp on its way is seen for as long as it is at each place: a streak.
 *
 * @param poses of a lamp, at the moments taken
 * @param limits how far the ray goes at each of them before it meets its holder
 * @param density per steradian of the ray's direction, where it was drawn from a lobe that spots of the lamp are reckoned
 *   with too: both share the lamp (see `SheenBy`). Infinity for a ray that sees it alone, null for one that must not
 */
export const bareLuminance = (
  source: Source,
  air: Air | null,
  { origin, direction }: Ray,
  surface: SurfacePoint | null,
  poses: readonly Pose[],
  limits: readonly number[] | null,
  density: number | null,
): number => {
  if (source.kind === 'sky') return surface ? 0 : skyLuminancePerLux;
  if (source.kind !== 'lamp' || density === null) return 0;
  let sum = 0;
  for (const [m, pose] of poses.entries()) {
    const seen = seenEmitter(source.emitter, pose, origin, direction);
    if (!seen || (surface && seen.t >= surface.distance) || (limits && seen.t >= (limits[m] as number))) continue;
    const { areaAcross, t } = seen;
    const luminancePerLumen = seen.luminancePerLumen * throughAir(air, t);
    const isAlone = density === Number.POSITIVE_INFINITY;
    sum += isAlone ? luminancePerLumen : (luminancePerLumen * density * areaAcross) / (density * areaAcross + t ** 2);
  }
  return sum / poses.length;
};
