import { depthLimits, hyperfocalMm } from '../camera/depth-of-field.ts';
import type { Camera, Frame } from '../setup/schema/setup.ts';
import { infinityMetres } from '../units/focus-range.ts';
import { exactFNumber } from '../units/third-stops.ts';
import { cocOf, type FocusStack, focusStack } from './focus-plan.ts';
import type { VisibleRange } from './look-around.ts';

/** What is sharp in a frame, from the lens, and where to focus so that all is. */
export interface DepthReading extends FocusStack {
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
}

const mm = 1000;
const orInfinity = (millimetres: number): number | null => (Number.isFinite(millimetres) ? millimetres / mm : null);

/** Reads a frame's depth of field; null when it is focused nearer than the lens can. */
export const depthReading = (camera: Camera, frame: Frame, range: VisibleRange): DepthReading | null => {
  const { focalLengthMm } = camera;
  const focusMm = frame.focusMetres >= infinityMetres ? Number.POSITIVE_INFINITY : frame.focusMetres * mm;
  if (focusMm <= focalLengthMm) return null;
  const fNumber = exactFNumber(frame.aperture);
  const cocMm = cocOf(camera);
  const { nearMm, farMm } = depthLimits(focalLengthMm, fNumber, cocMm, focusMm);
  const nearestMm = range.nearestMetres === null ? Number.POSITIVE_INFINITY : range.nearestMetres * mm;
  const reachesSky = frame.purpose === 'sky' || range.farthestMetres === null;
  const farthestMm = reachesSky ? Number.POSITIVE_INFINITY : (range.farthestMetres as number) * mm;
  return {
    nearMetres: nearMm / mm,
    farMetres: orInfinity(farMm),
    hyperfocalMetres: hyperfocalMm(focalLengthMm, fNumber, cocMm) / mm,
    circleOfConfusionMm: cocMm,
    nearestMetres: range.nearestMetres,
    farthestMetres: orInfinity(farthestMm),
    isSharpThroughout: nearMm <= nearestMm && farMm >= farthestMm,
    ...(range.nearestMetres === null
      ? { steps: [], complete: true }
      : focusStack(camera, frame.aperture, {
          nearestMetres: range.nearestMetres,
          farthestMetres: orInfinity(farthestMm),
        })),
  };
};
