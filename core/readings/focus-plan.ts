import { cocOfPixelMm, cocOfSensorMm } from '../camera/circle-of-confusion.ts';
import { focusSteps } from '../camera/focus-steps.ts';
import { pixelPitchMicrometres } from '../camera/sensors.ts';
import type { Camera } from '../setup/schema/setup.ts';
import { exactFNumber } from '../units/third-stops.ts';

/** A frame of a focus stack; null stands for infinity. */
export interface FocusStepReading {
  readonly focusMetres: number | null;
  readonly nearMetres: number;
  readonly farMetres: number | null;
}

/** Frames of a focus stack, near to far. */
export interface FocusStack {
  readonly steps: readonly FocusStepReading[];
  /** False when even the most steps do not reach the farthest thing. */
  readonly complete: boolean;
}

/** What must be sharp; null = infinity. */
export interface FocusRange {
  readonly nearestMetres: number;
  readonly farthestMetres: number | null;
  /** Share of its depth that a frame has in common with the next, 0 to below 1; left out, what forgives a ring turned by hand. */
  readonly overlapShare?: number;
}

/** More frames than this nobody makes in the dark; common practice, no published source. */
const mostSteps = 12;
const mm = 1000;
const orInfinity = (millimetres: number): number | null => (Number.isFinite(millimetres) ? millimetres / mm : null);

/** Largest blur on the sensor that counts as sharp, mm: for a print, or for two pixels, as the camera has it. */
export const cocOf = ({ sensor, sharpness }: Camera): number =>
  sharpness === 'pixel' ? cocOfPixelMm(pixelPitchMicrometres(sensor)) : cocOfSensorMm(sensor.widthMm, sensor.heightMm);

/**
 * Focus distances of a camera, near to far, whose depths of field join over a range (`focusSteps`: exact thin-lens limits).
 * None where the range begins nearer than the lens can focus at all, is turned round, or where the opening is smaller than
 * the blur allowed.
 *
 * @param aperture as marked
 */
export const focusStack = (
  camera: Camera,
  aperture: number,
  { nearestMetres, farthestMetres, ...overlap }: FocusRange,
): FocusStack => {
  const { focalLengthMm } = camera;
  const [fNumber, cocMm] = [exactFNumber(aperture), cocOf(camera)];
  const nearestMm = nearestMetres * mm;
  const farthestMm = farthestMetres === null ? Number.POSITIVE_INFINITY : farthestMetres * mm;
  if (nearestMm <= focalLengthMm || farthestMm < nearestMm || cocMm >= focalLengthMm / fNumber)
    return { steps: [], complete: false };
  const { steps, complete } = focusSteps({
    focalLengthMm,
    fNumber,
    cocMm,
    nearestMm,
    farthestMm,
    maxSteps: mostSteps,
    ...overlap,
  });
  const told = steps.map(({ focusMm, nearMm, farMm }) => ({
    focusMetres: orInfinity(focusMm),
    nearMetres: nearMm / mm,
    farMetres: orInfinity(farMm),
  }));
  return { steps: told, complete };
};
