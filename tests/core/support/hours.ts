import { directionFromBearing } from '../../../core/sky/frames-body.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';

/**
 * The worked site of shared/reference/sky.md, section 3: latitude -33, longitude 149, clocks of Sydney. On 2026-08-20 at
 * 20:30 the moon stands 56.02 degrees up at 272.90, half lit; on 2026-08-11 at 20:30 it is down and the core overhead.
 */
export const hourPlace = (localTime: string, more: object = {}) => ({
  latitudeDegrees: -33,
  longitudeDegrees: 149,
  localTime,
  timeZone: 'Australia/Sydney',
  sky: {},
  ...more,
});

/** A camera 1.5 m over the ground that looks at a bearing from the scene's north and a height, degrees. */
export const cameraToward = (bearingDegrees: number, altitudeDegrees: number, more: object = {}) => {
  const [x, y, z] = directionFromBearing(radiansFromDegrees(bearingDegrees), radiansFromDegrees(altitudeDegrees), 0);
  return { position: [0, 0, 1.5], aim: [10 * x, -10 * z, 1.5 + 10 * y], focalLengthMm: 24, ...more };
};
