import { blurDiameterMm } from '../camera/depth-of-field.ts';
import { pixelPitchMicrometres } from '../camera/sensors.ts';
import type { Camera, Frame } from '../setup/schema/setup.ts';
import { infinityMetres } from '../units/focus-range.ts';
import { exactFNumber } from '../units/third-stops.ts';

/**
 * Blur of a point out of focus, in pixels of the sensor: the diameter of the disc that it becomes there, thin lens. Below
 * one it is lost in the pixel. The lens's own faults and diffraction are not in it.
 *
 * @returns asks for the blur at a distance along the lens's axis, metres, Infinity for the stars; null when the frame is
 *   focused nearer than the lens can
 */
export const blurPixels = (
  { focalLengthMm, sensor }: Camera,
  { aperture, focusMetres }: Pick<Frame, 'aperture' | 'focusMetres'>,
): ((depthMetres: number) => number) | null => {
  const focusMm = focusMetres >= infinityMetres ? Number.POSITIVE_INFINITY : focusMetres * 1000;
  if (focusMm <= focalLengthMm) return null;
  const [fNumber, pitchMm] = [exactFNumber(aperture), pixelPitchMicrometres(sensor) / 1000];
  return (depthMetres) => blurDiameterMm(focalLengthMm, fNumber, focusMm, depthMetres * 1000) / pitchMm;
};

/** Blur of the sharpest of some frames: what a focus stack shows. null where none of them can be focused so. */
export const sharpestBlur = (
  camera: Camera,
  frames: readonly Pick<Frame, 'aperture' | 'focusMetres'>[],
): ((depthMetres: number) => number) | null => {
  const blurs = frames.flatMap((frame) => blurPixels(camera, frame) ?? []);
  return blurs.length > 0 ? (depthMetres) => Math.min(...blurs.map((blur) => blur(depthMetres))) : null;
};
