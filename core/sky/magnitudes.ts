/** Illuminance outside the air of a star of magnitude 0, lux: the law of sky.md 4.0, also Allen's 2.54e-6 (from memory). */
const luxAtMagnitudeZero = 2.54e-6;

const steradiansPerSquareArcsecond = (Math.PI / (180 * 3600)) ** 2;
const steradiansPerSquareDegree = (Math.PI / 180) ** 2;

/** Illuminance on a surface square to a star, lux, outside the air where the magnitude is. */
export const luxFromMagnitude = (magnitude: number): number => luxAtMagnitudeZero * 10 ** (-0.4 * magnitude);

/** Magnitude of a star from the illuminance on a surface square to it; callers pass a positive one. */
export const magnitudeFromLux = (lux: number): number => -2.5 * Math.log10(lux / luxAtMagnitudeZero);

/** Luminance in cd/m2 from a brightness in magnitudes a square arcsecond: 1.0807e5 x 10^(-0.4 mu). */
export const luminanceFromSurfaceMagnitude = (magnitude: number): number =>
  luxFromMagnitude(magnitude) / steradiansPerSquareArcsecond;

/** Magnitudes a square arcsecond from a positive luminance in cd/m2. */
export const surfaceMagnitudeFromLuminance = (luminanceCdM2: number): number =>
  magnitudeFromLux(luminanceCdM2 * steradiansPerSquareArcsecond);

/** Luminance of 1 S10, one star of magnitude 10 in every square degree: 8.338e-7 cd/m2. */
export const luminanceOfS10 = luxFromMagnitude(10) / steradiansPerSquareDegree;

/** Luminance of 1 nL (nanolambert): 1e-5 / pi cd/m2, exact. */
export const luminanceOfNanolambert = 1e-5 / Math.PI;
