import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';

/** A sky over a place, degrees north and east, at an instant; the air of it is plain. */
export const skyInput = (
  latitudeDegrees: number,
  longitudeDegrees: number,
  instant: string | number,
  northDegrees = 0,
): SkyInput => ({
  latitudeRadians: radiansFromDegrees(latitudeDegrees),
  longitudeRadians: radiansFromDegrees(longitudeDegrees),
  utcMilliseconds: typeof instant === 'number' ? instant : Date.parse(instant),
  northRadians: radiansFromDegrees(northDegrees),
  zenithMagnitude: 21.7,
  extinctionMagnitudes: 0.2,
  thinCloudDepth: 0,
});
