import { glowShape } from '../../../core/sky/glow-dome.ts';
import { luminanceFromSurfaceMagnitude, surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';

/** Natural zenith without moon, mag/arcsec2: what shares of "the natural sky" are of. */
const naturalMagnitude = 21.9;

/** Most and least that the document and the field take, mag/arcsec2. */
export const brightestMagnitude = 13;
export const faintestMagnitude = 27;

/**
 * Glow of a town ten degrees above the horizon at its bearing, in cd/m2, from its people and how far off it is.
 *
 * Walker's law gives the sky 45 degrees up toward the town: 0.01 P D^-2.5 of the natural sky (P people, D km); the glow's
 * own shape leads from there down to ten degrees. Good to a factor of three: towns differ in their lamps, and the law was
 * found for 10 to 100 km. Source: Walker, PASP 89 (1977), 405.
 *
 * @param people over 0
 * @param distanceKm 5 to 300; nearer ones are taken as 5
 */
export const glowOfTown = (people: number, distanceKm: number): number => {
  const share = 0.01 * people * Math.max(distanceKm, 5) ** -2.5;
  return (share * luminanceFromSurfaceMagnitude(naturalMagnitude)) / glowShape(45, 0, 0);
};

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
  if (magnitude > 20.5) return 'plain to see';
  return magnitude > 18.5 ? 'bright' : 'very bright';
};
