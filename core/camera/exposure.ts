import { stopsFromRatio } from '../units/stops.ts';

/** The part of an exposure that turns scene light into sensor light. */
export interface Exposure {
  /** Exact f-number N. */
  readonly fNumber: number;
  /** ISO speed S. */
  readonly iso: number;
}

/** Lens factor q = (pi/4) T v cos^4 of ISO 12232, rounded there to 0.65. */
export const lensFactor = 0.65;

/** Sensor exposure of mid-grey at ISO S is 10 / S lx s (standard output sensitivity, ISO 12232). */
export const midGreyExposure = (iso: number): number => 10 / iso;

/** Saturation at 78 / S lx s (ISO 12232). */
export const saturationExposure = (iso: number): number => 78 / iso;

/** Saturation over mid-grey, as a ratio: 2.963 stops. */
export const saturationRatio = 78 / 10;

/** The same in stops. */
export const saturationStops = stopsFromRatio(saturationRatio);

/**
 * Sensor exposure H = q L t / N^2 in lx s (ISO 12232).
 *
 * @param luminanceSeconds time integral of scene luminance, cd s / m^2
 */
export const sensorExposure = (luminanceSeconds: number, fNumber: number): number =>
  (lensFactor * luminanceSeconds) / fNumber ** 2;

/** Exposure relative to mid-grey (1 = mid-grey) per cd s / m^2 of scene light. Every layer's weight ends in this factor. */
export const midGreyRatioPerLuminanceSecond = ({ fNumber, iso }: Exposure): number =>
  sensorExposure(1, fNumber) / midGreyExposure(iso);

/** Stops from mid-grey of a surface: log2(H S / 10); -Infinity where no light came. */
export const stopsFromMidGrey = (luminanceSeconds: number, exposure: Exposure): number =>
  stopsFromRatio(luminanceSeconds * midGreyRatioPerLuminanceSecond(exposure));

/**
 * Dose in lx s that brings a matt surface to mid-grey, light square on: pi L / rho with q L t / N^2 = 10 / S.
 * For rho = 0.18 this is 268.5 N^2/S; the trade's 250 N^2/S (ISO 2720, C = 250) is 0.10 stop less, because the meter's
 * mid-point is 8.125/S at its own 15.7 % grey while mid-grey here is 10/S at 18 %.
 */
export const doseForMidGrey = (exposure: Exposure, reflectance: number): number =>
  Math.PI / (reflectance * midGreyRatioPerLuminanceSecond(exposure));
