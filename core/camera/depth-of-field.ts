/** Nearest and farthest distance from the lens that is sharp, in mm; `farMm` is Infinity when the horizon is. */
export interface DepthLimits {
  readonly nearMm: number;
  readonly farMm: number;
}

/** A thin lens images only what lies beyond its focal length; a caller that asks for less has mixed up its units. */
const assertBeyondFocalLength = (distanceMm: number, focalLengthMm: number): void => {
  if (!(distanceMm > focalLengthMm))
    throw new RangeError(`must lie beyond the focal length of ${focalLengthMm} mm: ${distanceMm} mm`);
};

/**
 * Hyperfocal distance H = f^2 / (N c) + f in mm: focused there, all from H/2 to infinity is sharp.
 *
 * @param fNumber exact f-number (`exactFNumber`)
 * @param cocMm largest blur that counts as sharp, above 0
 */
export const hyperfocalMm = (focalLengthMm: number, fNumber: number, cocMm: number): number =>
  focalLengthMm ** 2 / (fNumber * cocMm) + focalLengthMm;

/**
 * Limits of the depth of field of a thin lens: near = s(H-f)/(H+s-2f), far = s(H-f)/(H-s), Infinity from s = H on.
 * Exact for a lens whose pupils are of one size; distances count from the lens. Diffraction is not in it.
 *
 * @param focusMm focused distance s; may be Infinity
 * @throws RangeError when the focus does not lie beyond the focal length
 */
export const depthLimits = (focalLengthMm: number, fNumber: number, cocMm: number, focusMm: number): DepthLimits => {
  assertBeyondFocalLength(focusMm, focalLengthMm);
  const hyperfocal = hyperfocalMm(focalLengthMm, fNumber, cocMm);
  // both limits over s, so that a focus at infinity needs no branch
  const rise = hyperfocal - focalLengthMm;
  const fall = hyperfocal / focusMm - 1;
  return {
    nearMm: rise / (1 + (hyperfocal - 2 * focalLengthMm) / focusMm),
    farMm: fall > 0 ? rise / fall : Number.POSITIVE_INFINITY,
  };
};

/**
 * Diameter in mm, on the sensor, of the disc that a point out of focus becomes: f^2/N |1/s - 1/d| / (1 - f/s), which is
 * f^2 / (N (s - f)) |d - s| / d. 0 in focus; equal to the circle of confusion at the limits of `depthLimits`.
 *
 * @param focusMm focused distance s; may be Infinity
 * @param atMm distance d of the point from the lens, above 0; may be Infinity
 * @throws RangeError when the focus does not lie beyond the focal length
 */
export const blurDiameterMm = (focalLengthMm: number, fNumber: number, focusMm: number, atMm: number): number => {
  assertBeyondFocalLength(focusMm, focalLengthMm);
  return ((focalLengthMm ** 2 / fNumber) * Math.abs(1 / focusMm - 1 / atMm)) / (1 - focalLengthMm / focusMm);
};
