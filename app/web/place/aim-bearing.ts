import type { Camera } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians, wrapDegrees } from '../../../core/units/angle.ts';

/**
 * True bearing from the camera to what it looks at, or to another place of the scene, degrees in [0, 360).
 *
 * @param northDegrees true bearing of the scene's north
 */
export const aimBearing = (
  { position, aim }: Pick<Camera, 'position' | 'aim'>,
  northDegrees: number,
  to: readonly [east: number, north: number, ...rest: number[]] = aim,
): number => {
  const [east, north] = [to[0] - position[0], to[1] - position[1]];
  return wrapDegrees(degreesFromRadians(Math.atan2(east, north)) + northDegrees);
};
