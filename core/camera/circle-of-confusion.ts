/** Parts of the sensor's diagonal that still look like points in a print at arm's length: 0.030 mm on 36 x 24 mm. */
const diagonalParts = 1442;

/**
 * Largest blur that still counts as sharp in a print, in mm: the sensor's diagonal over 1442. A convention (from
 * memory) about prints seen at arm's length; large prints and screens at full size need `cocOfPixelMm`.
 */
export const cocOfSensorMm = (widthMm: number, heightMm: number): number =>
  Math.hypot(widthMm, heightMm) / diagonalParts;

/**
 * Largest blur that still counts as sharp at full size on a screen, in mm: two pixels. Our own choice: a sensor with a
 * colour mosaic resolves no finer than about two pixels, so that a smaller circle would ask for what it cannot show.
 */
export const cocOfPixelMm = (pitchMicrometres: number): number => (2 * pitchMicrometres) / 1000;
