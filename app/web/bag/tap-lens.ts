import type { PhotoLens } from '../../../core/camera/angle-in-photo.ts';
import type { PhotoSettings } from '../../../core/testshot/photo-settings.ts';
import { degreesFromRadians, radiansFromDegrees } from '../../../core/units/angle.ts';

/** What is known of the camera that took a photo of a spot. */
export interface TapCamera {
  readonly settings: Pick<PhotoSettings, 'focalLengthMm' | 'focalLength35Mm'> | null;
  /** Of the photo, upright. */
  readonly width: number;
  readonly height: number;
  /** Of the setup's camera. */
  readonly sensor: { readonly widthMm: number; readonly heightMm: number };
  readonly focalLengthMm: number;
  /** How wide the photo sees along its longer side, as typed; null = not typed. */
  readonly typedDegrees: number | null;
}

export interface TapLens {
  readonly lens: PhotoLens;
  /** Along the longer side. */
  readonly degrees: number;
  readonly from: 'typed' | 'equivalent' | 'setup';
  /** Whether the setup's sensor is hardly the one that took it: then nothing is to be made of the taps. */
  readonly isDoubtful: boolean;
}

/** Width that focal lengths are told for in the tag of the equivalent one, mm (Exif 2.32, tag 0xA405: 35 mm film). */
const filmMm = 36;
/** A wider view than this, degrees, or a picture of another shape by more than this share, is not the setup's camera's. Our choice. */
const [widestDegrees, mostOffShape] = [100, 0.03];

/**
 * The lens that a photo of a spot was taken through: as typed; else by its equivalent focal length; else by its own focal
 * length on the setup's sensor.
 */
export const tapLens = ({ settings, width, height, sensor, focalLengthMm, typedDegrees }: TapCamera): TapLens => {
  const shape = Math.min(width, height) / Math.max(width, height);
  const lensOf = (focal: number, longMm: number, shortMm: number): PhotoLens => ({
    focalLengthMm: focal,
    sensorWidthMm: width >= height ? longMm : shortMm,
    sensorHeightMm: width >= height ? shortMm : longMm,
  });
  const degreesOf = (focal: number, longMm: number) => degreesFromRadians(2 * Math.atan(longMm / 2 / focal));
  const equivalent = settings?.focalLength35Mm ?? null;
  if (typedDegrees !== null) {
    const focal = filmMm / 2 / Math.tan(radiansFromDegrees(typedDegrees / 2));
    const lens = lensOf(focal, filmMm, filmMm * shape);
    return { lens, degrees: typedDegrees, from: 'typed', isDoubtful: false };
  }
  if (equivalent !== null) {
    const lens = lensOf(equivalent, filmMm, filmMm * shape);
    return { lens, degrees: degreesOf(equivalent, filmMm), from: 'equivalent', isDoubtful: false };
  }
  const [long, short] = [Math.max(sensor.widthMm, sensor.heightMm), Math.min(sensor.widthMm, sensor.heightMm)];
  const focal = settings?.focalLengthMm ?? focalLengthMm;
  const degrees = degreesOf(focal, long);
  const isOtherShape = Math.abs(shape / (short / long) - 1) > mostOffShape;
  return {
    lens: lensOf(focal, long, short),
    degrees,
    from: 'setup',
    isDoubtful: degrees > widestDegrees || isOtherShape,
  };
};
