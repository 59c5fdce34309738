type Fields = Record<string, unknown>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Ten degrees up the glow of a town is this share of what it is at the horizon: ((2 + 6) / 16)^2.9 (core/sky/glow-dome.ts). */
const shareTenDegreesUp = 0.134;

/** Version 1 took this colour for a town that told none. */
const colourOfVersion1 = 2200;

/** @param northDegrees true bearing of the scene's north */
const renewed = (dome: unknown, northDegrees: number): unknown => {
  if (!isFields(dome)) return dome;
  const { luminanceCdM2, heightDegrees: _dropped, bearingDegrees, ...kept } = dome;
  const bearing = typeof bearingDegrees === 'number' ? (bearingDegrees + northDegrees) % 360 : bearingDegrees;
  return {
    temperatureKelvin: colourOfVersion1,
    ...kept,
    bearingDegrees: bearing,
    ...(typeof luminanceCdM2 === 'number' && {
      luminanceAt10DegreesCdM2: Math.min(luminanceCdM2 * shareTenDegreesUp, 1),
    }),
  };
};

/**
 * Version 1 to 2: the glow of a town is told ten degrees up, where it can be measured, has one shape, and stands at a true
 * bearing, no longer at one of the scene.
 */
export const glowTenDegreesUp = (document: Fields): Fields => {
  const { place } = document;
  if (!isFields(place) || !Array.isArray(place['glowDomes'])) return document;
  const north = typeof place['northDegrees'] === 'number' ? place['northDegrees'] : 0;
  const glowDomes = place['glowDomes'].map((dome) => renewed(dome, north));
  return { ...document, place: { ...place, glowDomes } };
};
