/** What a photo was taken with: sensor as it was held, millimetres. */
export interface PhotoLens {
  readonly focalLengthMm: number;
  readonly sensorWidthMm: number;
  readonly sensorHeightMm: number;
}

type Place = readonly [x: number, y: number];

/**
 * Angle between what lies at two places of a photo, seen from the lens, in radians; a pinhole focused at infinity, without
 * distortion.
 *
 * @param a places, 0 to 1 each way from the top left
 */
export const angleInPhoto = (
  a: Place,
  b: Place,
  { focalLengthMm, sensorWidthMm, sensorHeightMm }: PhotoLens,
): number => {
  const ray = ([x, y]: Place) => [(x - 0.5) * sensorWidthMm, (y - 0.5) * sensorHeightMm, focalLengthMm] as const;
  const [p, q] = [ray(a), ray(b)];
  const dot = p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
  const cross = Math.hypot(p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]);
  return Math.atan2(cross, dot);
};
