import { luminanceFromSurfaceMagnitude, surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';

/** Most and least that the document and the field take, mag/arcsec2. */
export const brightestMagnitude = 13;
export const faintestMagnitude = 27;

/** As a meter tells it; a glow of nothing as the faintest that is told. */
export const magnitudeOfGlow = (luminanceCdM2: number): number =>
  luminanceCdM2 > 0 ? Math.min(surfaceMagnitudeFromLuminance(luminanceCdM2), faintestMagnitude) : faintestMagnitude;

/** The other way round. */
export const glowOfMagnitude = (magnitude: number): number =>
  Number(luminanceFromSurfaceMagnitude(magnitude).toPrecision(4));

/** Plain sense of a glow ten degrees up (common practice, no published source). */
export const glowWord = (magnitude: number): string => {
  if (magnitude > 23.5) return 'not seen';
  if (magnitude > 22) return 'just seen';
  if (magnitude > 20.5) return 'easily seen';
  return magnitude > 18.5 ? 'bright' : 'very bright';
};
