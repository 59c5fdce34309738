import { cocOfPixelMm, cocOfSensorMm } from '../camera/circle-of-confusion.ts';
import { depthLimits, hyperfocalMm } from '../camera/depth-of-field.ts';
import { type FocusTask, focusSteps } from '../camera/focus-steps.ts';
import { pixelPitchMicrometres } from '../camera/sensors.ts';
import type { Camera, Frame } from '../setup/schema/setup.ts';
import { exactFNumber } from '../units/third-stops.ts';
import type { VisibleRange } from './look-around.ts';

/** A frame of a focus stack; null stands for infinity. */
export interface FocusStepReading {
  readonly focusMetres: number | null;
  readonly nearMetres: number;
  readonly farMetres: number | null;
}

/** What is sharp in a frame, from the lens, and where to focus so that all is. */
export interface DepthReading {
  readonly nearMetres: number;
  /** null = infinity. */
  readonly farMetres: number | null;
  readonly hyperfocalMetres: number;
  /** Largest blur on the sensor that counts as sharp. */
  readonly circleOfConfusionMm: number;
  /** Nearest thing in the picture; null when it shows nothing but sky. */
  readonly nearestMetres: number | null;
  /** Farthest thing that should be sharp: of a sky frame the stars, else the farthest subject; null = infinity. */
  readonly farthestMetres: number | null;
  readonly isSharpThroughout: boolean;
  /** Focus distances, near to far, whose depths join from the nearest to the farthest thing; one when one is enough. */
  readonly steps: readonly FocusStepReading[];
  /** False when even the most steps do not reach the farthest thing. */
  readonly complete: boolean;
}

/** More frames than this nobody makes in the dark; common practice, no published source. */
const mostSteps = 12;
const mm = 1000;
/** The document's farthest focus stands for infinity. */
const infinityMetres = 10_000;
const orInfinity = (millimetres: number): number | null => (Number.isFinite(millimetres) ? millimetres / mm : null);

const planOf = (task: FocusTask): Pick<DepthReading, 'steps' | 'complete'> => {
  // a thing nearer than the lens can focus at all, or an opening smaller than the blur allowed: no plan
  const opening = task.focalLengthMm / task.fNumber;
  if (task.nearestMm <= task.focalLengthMm || task.farthestMm < task.nearestMm || task.cocMm >= opening)
    return { steps: [], complete: false };
  const { steps, complete } = focusSteps(task);
  const told = steps.map(({ focusMm, nearMm, farMm }) => ({
    focusMetres: orInfinity(focusMm),
    nearMetres: nearMm / mm,
    farMetres: orInfinity(farMm),
  }));
  return { steps: told, complete };
};

/** Reads a frame's depth of field; null when it is focused nearer than the lens can. */
export const depthReading = (camera: Camera, frame: Frame, range: VisibleRange): DepthReading | null => {
  const { focalLengthMm, sensor, sharpness } = camera;
  const focusMm = frame.focusMetres >= infinityMetres ? Number.POSITIVE_INFINITY : frame.focusMetres * mm;
  if (focusMm <= focalLengthMm) return null;
  const fNumber = exactFNumber(frame.aperture);
  const cocMm =
    sharpness === 'pixel'
      ? cocOfPixelMm(pixelPitchMicrometres(sensor))
      : cocOfSensorMm(sensor.widthMm, sensor.heightMm);
  const { nearMm, farMm } = depthLimits(focalLengthMm, fNumber, cocMm, focusMm);
  const nearestMm = range.nearestMetres === null ? Number.POSITIVE_INFINITY : range.nearestMetres * mm;
  const reachesSky = frame.purpose === 'sky' || range.farthestMetres === null;
  const farthestMm = reachesSky ? Number.POSITIVE_INFINITY : (range.farthestMetres ?? 0) * mm;
  const task = { focalLengthMm, fNumber, cocMm, nearestMm, farthestMm, maxSteps: mostSteps };
  return {
    nearMetres: nearMm / mm,
    farMetres: orInfinity(farMm),
    hyperfocalMetres: hyperfocalMm(focalLengthMm, fNumber, cocMm) / mm,
    circleOfConfusionMm: cocMm,
    nearestMetres: range.nearestMetres,
    farthestMetres: orInfinity(farthestMm),
    isSharpThroughout: nearMm <= nearestMm && farMm >= farthestMm,
    ...(Number.isFinite(nearestMm) ? planOf(task) : { steps: [], complete: true }),
  };
};
