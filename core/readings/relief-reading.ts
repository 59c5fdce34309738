import { shadowLengthPerHeight } from '../geometry/shadow.ts';
import { dot, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { degreesFromRadians } from '../units/angle.ts';

/** How light rakes a surface. */
export interface Raking {
  /** Angle between ray and surface; negative when the lamp is behind the surface. */
  readonly grazingDegrees: number;
  /** How many times its height a bump's shadow is long: 1 / tan; null when the light does not reach the surface's front. */
  readonly shadowLengthPerHeight: number | null;
}

/** Raking of a lamp over a surface at a point. */
export const raking = (point: Vec3, normal: Vec3, lamp: Vec3): Raking => {
  const grazing = Math.asin(Math.min(Math.max(dot(normal, normalize(sub(lamp, point))), -1), 1));
  const ratio = shadowLengthPerHeight(grazing);
  return { grazingDegrees: degreesFromRadians(grazing), shadowLengthPerHeight: Number.isFinite(ratio) ? ratio : null };
};

/** Raking over level ground under the aim point. */
export const groundRaking = (aim: Vec3, lamp: Vec3): Raking => raking([aim[0], 0, aim[2]], [0, 1, 0], lamp);
