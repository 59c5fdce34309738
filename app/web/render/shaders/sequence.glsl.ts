import { dimension, firstOfPair, orderDimension } from '../../../../core/trace/sequence.ts';

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
const int FIRST_OF_PAIR[${firstOfPair.length}] = int[](${firstOfPair.join(', ')});
${pixelNumberGlsl}
uint turnedRound(uint v) {
  v = ((v >> 1u) & 0x55555555u) | ((v & 0x55555555u) << 1u);
  v = ((v >> 2u) & 0x33333333u) | ((v & 0x33333333u) << 2u);
  v = ((v >> 4u) & 0x0f0f0f0fu) | ((v & 0x0f0f0f0fu) << 4u);
  v = ((v >> 8u) & 0x00ff00ffu) | ((v & 0x00ff00ffu) << 8u);
  return (v >> 16u) | (v << 16u);
}

uint scrambled(uint v, uint seed) {
  v += seed;
  v ^= v * 0x6c50b47cu;
  v ^= v * 0xb82f1e52u;
  v ^= v * 0xc7afe638u;
  return v ^ (v * 0x8d22f6e6u);
}

uint pascal(uint v) {
  v ^= (v >> 1u) & 0x55555555u;
  v ^= (v >> 2u) & 0x33333333u;
  v ^= (v >> 4u) & 0x0f0f0f0fu;
  v ^= (v >> 8u) & 0x00ff00ffu;
  return v ^ (v >> 16u);
}

float scatteredNumber(int sampleIndex, int dim, uvec2 pixel) {
  int first = FIRST_OF_PAIR[dim];
  uint order = turnedRound(scrambled(turnedRound(uint(sampleIndex)), pixelHash(pixel, ${orderDimension} + first)));
  return unitNumber(turnedRound(scrambled(dim == first ? order : pascal(order), pixelHash(pixel, dim))));
}

float chanceNumber(int sampleIndex, int dim, uvec2 pixel) {
  return unitNumber(pixelHash(pixel, dim + 64 * (sampleIndex + 1)));
}

float sampleNumber(int sampleIndex, int dim, uvec2 pixel) {
  return sampleIndex == 0 ? 0.5 : scatteredNumber(sampleIndex, dim, pixel);
}
`;
