import type { Vec3 } from './vec.ts';

/**
 * Where the line from a lamp through a point meets the ground y = 0, by similar triangles; null when the lamp is at or below
 * the point (checkvalues.md 8i).
 */
export const projectToGround = (lamp: Vec3, point: Vec3): Vec3 | null => {
  if (lamp[1] <= point[1]) return null;
  const k = lamp[1] / (lamp[1] - point[1]);
  return [lamp[0] + (point[0] - lamp[0]) * k, 0, lamp[2] + (point[2] - lamp[2]) * k];
};

/** How many times its own height a bump's shadow is, at a grazing angle in radians: 1 / tan. Infinity at 0 and below. */
export const shadowLengthPerHeight = (grazingRadians: number): number =>
  grazingRadians <= 0 ? Number.POSITIVE_INFINITY : 1 / Math.tan(grazingRadians);
