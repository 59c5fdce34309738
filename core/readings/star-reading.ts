import { pixelPitchMicrometres } from '../camera/sensors.ts';
import { type StarRule, starRules } from '../camera/star-rules.ts';
import { trailPixels } from '../camera/star-trail.ts';
import type { Camera, Frame } from '../setup/schema/setup.ts';
import { exactFNumber, exactSeconds } from '../units/third-stops.ts';

/** How stars on the celestial equator, where they run fastest, come out in a frame. */
export interface StarReading {
  /** Length of their trails in the middle of the picture, in pixels. */
  readonly trailPixels: number;
  /** How long the usual rules would keep the shutter open, and what trail that gives. */
  readonly rules: readonly StarRule[];
}

export const starReading = ({ focalLengthMm, sensor }: Camera, frame: Frame): StarReading => {
  const pitchMicrometres = pixelPitchMicrometres(sensor);
  return {
    trailPixels: trailPixels(focalLengthMm, exactSeconds(frame.seconds), pitchMicrometres, 0),
    rules: starRules({
      focalLengthMm,
      fNumber: exactFNumber(frame.aperture),
      pitchMicrometres,
      sensorDiagonalMm: Math.hypot(sensor.widthMm, sensor.heightMm),
      declinationRadians: 0,
    }),
  };
};
