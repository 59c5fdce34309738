import type { CameraView } from './camera-view.ts';

/**
 * Natural fall-off of light towards the picture's edge: cos^4 of the angle between the ray and the lens axis; 1 on the
 * axis, 0.25 at 45 degrees. Holds for a thin rectilinear lens with a small opening. Real wide lenses lose more wide
 * open (the barrel cuts the beam) and can lose less (pupils that turn towards the edge).
 *
 * Source: ISO 12232's lens factor carries the same cos^4; textbook radiometry of a Lambertian surface.
 *
 * @param x 0 = left edge, 1 = right edge of the picture
 * @param y 0 = top edge, 1 = bottom edge
 */
export const cosFourth = (
  { tanHalfWidth, tanHalfHeight }: Pick<CameraView, 'tanHalfWidth' | 'tanHalfHeight'>,
  x: number,
  y: number,
): number => {
  const h = (2 * x - 1) * tanHalfWidth;
  const v = (1 - 2 * y) * tanHalfHeight;
  // cos^2 = 1 / (1 + tan^2), so that no angle is needed
  return 1 / (1 + h * h + v * v) ** 2;
};
