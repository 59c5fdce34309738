import { dimension, sequenceSteps } from '../../../../core/trace/sequence.ts';

const steps = sequenceSteps.map((step) => `${step}u`).join(', ');
const names = Object.entries(dimension).map(([name, at]) => `const int DIM_${name.toUpperCase()} = ${at};`);

/** Sample numbers, twins of core/trace/sequence.ts: the same integers, so the same numbers. */
export const sequenceGlsl = /* glsl */ `
${names.join('\n')}
const uint STEPS[${sequenceSteps.length}] = uint[](${steps});

uint pixelHash(uvec2 pixel, int dim) {
  uint h = (pixel.x * 0x9e3779b1u) ^ (pixel.y * 0x85ebca6bu) ^ (uint(dim + 1) * 0xc2b2ae35u);
  h = h * 747796405u + 2891336453u;
  h = ((h >> ((h >> 28u) + 4u)) ^ h) * 277803737u;
  return (h >> 22u) ^ h;
}

float sampleNumber(int sampleIndex, int dim, uvec2 pixel) {
  if (sampleIndex == 0) return 0.5;
  uint bits = uint(sampleIndex) * STEPS[dim] + pixelHash(pixel, dim);
  return float(bits >> 8u) / 16777216.0;
}
`;
