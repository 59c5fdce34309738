/** How the photo was developed, as far as the user knows. */
export type PhotoLook = 'unknown' | 'neutral' | 'standard';

/** Contrast that a camera's standard look is taken to have about mid-grey, as an exponent of light. */
const standardContrast = 1.2;

/** Share of a distance from mid-grey that a look may be wrong by, over what is undone. */
const slopeDoubt: Readonly<Record<PhotoLook, number>> = { neutral: 0.05, standard: 0.17, unknown: 0.3 };

/** Doubt at mid-grey itself, stops: how a maker sets mid-grey and ISO. */
const baseDoubtStops = 0.1;

/**
 * Stops from mid-grey on the sensor of stops from mid-grey in the photo, sRGB undone. A camera's standard look is undone
 * by its usual contrast, mid-grey kept; a neutral or unknown one is taken as it is.
 *
 * Model (common practice, no published source): cameras set mid-grey where ISO 12232 says (sRGB 118), and their curves are
 * 1 to 1.5 times as steep as light about it. So at `s` stops in the photo, a look that is not known leaves up to 0.3 |s| in
 * doubt, one whose contrast of 1.2 is undone 0.17 |s|, a neutral one 0.05 |s|; and at mid-grey 0.1 stop are left.
 */
export const undoneStops = (photoStops: number, look: PhotoLook): number =>
  look === 'standard' ? photoStops / standardContrast : photoStops;

/** What the camera's curve may be worth, stops either way, at so many stops from mid-grey in the photo. */
export const curveDoubtStops = (photoStops: number, look: PhotoLook): number =>
  baseDoubtStops + slopeDoubt[look] * Math.abs(photoStops);
