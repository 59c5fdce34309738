/** How the photo was developed, as far as the user knows. */
export type PhotoLook = 'unknown' | 'neutral' | 'standard';

/** Contrast that a camera's standard look is taken to have about mid-grey, as an exponent of light. */
const standardContrast = 1.2;

/** Share of a distance from mid-grey that a look may be wrong by, over what is undone: within a stop, and beyond. */
const slopeDoubt: Readonly<Record<PhotoLook, readonly [near: number, far: number]>> = {
  neutral: [0.05, 0.05],
  standard: [0.17, 0.25],
  unknown: [0.3, 0.45],
};

/** Doubt at mid-grey itself, stops: how a maker sets mid-grey and ISO. */
const baseDoubtStops = 0.1;

/**
 * Stops from mid-grey on the sensor of stops from mid-grey in the photo, sRGB undone. A camera's standard look is undone
 * by its usual contrast, mid-grey kept; a neutral or unknown one is taken as it is.
 *
 * Model (common practice, no published source): cameras set mid-grey where ISO 12232 says (sRGB 118), and their curves are
 * 1 to 1.5 times as steep as light about it, steeper in the toe. So a look that is not known leaves 0.3 stop in doubt at one
 * stop from mid-grey and 0.45 more for each stop beyond; one whose contrast of 1.2 is undone 0.17 and 0.25; a neutral one
 * 0.05 and 0.05; and at mid-grey itself 0.1 stop are left. These are held to invented curves in tests.
 */
export const undoneStops = (photoStops: number, look: PhotoLook): number =>
  look === 'standard' ? photoStops / standardContrast : photoStops;

/** What the camera's curve may be worth, stops either way, at so many stops from mid-grey in the photo. */
export const curveDoubtStops = (photoStops: number, look: PhotoLook): number => {
  const [near, far] = slopeDoubt[look];
  const away = Math.abs(photoStops);
  return baseDoubtStops + near * Math.min(away, 1) + far * Math.max(away - 1, 0);
};
