import { dimension, sequenceSteps } from '../../../../core/trace/sequence.ts';

const steps = sequenceSteps.map((step) => `${step}u`).join(', ');
const names = Object.entries(dimension).map(([name, at]) => `const int DIM_${name.toUpperCase()} = ${at};`);

/** Numbers of pixels, twins of core/trace/sequence.ts: the same integers, so the same numbers. */
export const pixelNumberGlsl = /* glsl */ `
uint pixelHash(uvec2 pixel, int dim) {
  uint h = (pixel.x * 0x9e3779b1u) ^ (pixel.y * 0x85ebca6bu) ^ (uint(dim + 1) * 0xc2b2ae35u);
  h = h * 747796405u + 2891336453u;
  h = ((h >> ((h >> 28u) + 4u)) ^ h) * 277803737u;
  return (h >> 22u) ^ h;
}

float unitNumber(uint bits) { return float(bits >> 8u) / 16777216.0; }

float pixelNumber(uvec2 pixel, int dim) { return unitNumber(pixelHash(pixel, dim)); }
`;

/** Numbers of samples, twins of core/trace/sequence.ts. */
export const sequenceGlsl = /* glsl */ `
${names.join('\n')}
const uint STEPS[${sequenceSteps.length}] = uint[](${steps});
${pixelNumberGlsl}
float scatteredNumber(int sampleIndex, int dim, uvec2 pixel) {
  return unitNumber(uint(sampleIndex) * STEPS[dim] + pixelHash(pixel, dim));
}

float chanceNumber(int sampleIndex, int dim, uvec2 pixel) {
  return unitNumber(pixelHash(pixel, dim + 64 * (sampleIndex + 1)));
}

float sampleNumber(int sampleIndex, int dim, uvec2 pixel) {
  return sampleIndex == 0 ? 0.5 : scatteredNumber(sampleIndex, dim, pixel);
}
`;
