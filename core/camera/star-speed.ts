import { cross, dot, type Vec3 } from '../geometry/vec.ts';
import type { CameraView } from './camera-view.ts';
import { siderealRadiansPerSecond } from './star-trail.ts';

/**
 * How fast a star runs over the picture of a still rectilinear lens, in focal lengths a second: the turn of the sky carried
 * through the projection, so that stretch toward the corners is in it. In the middle of the picture it is w cos(declination).
 * Times the seconds it is the trail's length as long as that is short.
 *
 * @param toward unit, to the star; in front of the lens
 * @param pole unit, to either celestial pole, in the same axes
 */
export const starSpeed = (
  { forward, right, up }: Pick<CameraView, 'forward' | 'right' | 'up'>,
  toward: Vec3,
  pole: Vec3,
): number => {
  const way = cross(pole, toward);
  const [depth, deeper] = [dot(toward, forward), dot(way, forward)];
  // the quotient rule for each of the two coordinates of the picture
  const [across, down] = [right, up].map(
    (axis) => (dot(way, axis) * depth - dot(toward, axis) * deeper) / depth ** 2,
  ) as [number, number];
  return siderealRadiansPerSecond * Math.hypot(across, down);
};
