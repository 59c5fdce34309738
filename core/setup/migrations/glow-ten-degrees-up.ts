type Fields = Record<string, unknown>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Ten degrees up the glow of a town is this share of what it is at the horizon: ((2 + 6) / 16)^2.9 (core/sky/glow-dome.ts). */
const shareTenDegreesUp = 0.134;

const renewed = (dome: unknown): unknown => {
  if (!isFields(dome)) return dome;
  const { luminanceCdM2, heightDegrees: _dropped, ...kept } = dome;
  return typeof luminanceCdM2 === 'number'
    ? { ...kept, luminanceAt10DegreesCdM2: Math.min(luminanceCdM2 * shareTenDegreesUp, 1) }
    : kept;
};

/** Version 1 to 2: the glow of a town is told ten degrees up, where it can be measured, and has one shape. */
export const glowTenDegreesUp = (document: Fields): Fields => {
  const { place } = document;
  if (!isFields(place) || !Array.isArray(place['glowDomes'])) return document;
  return { ...document, place: { ...place, glowDomes: place['glowDomes'].map(renewed) } };
};
