/**
 * What each dimension is for. Those from `secondBounceU` on are drawn by chance alone. The way on from a sheen in direct
 * light takes the numbers of the first bounce: no layer has both.
 */
export const dimension = {
  pixelX: 0,
  pixelY: 1,
  emitterU: 2,
  emitterV: 3,
  /** Which of the moments of a sample shadows are traced for. */
  moment: 4,
  lensU: 5,
  lensV: 6,
  bounceU: 7,
  bounceV: 8,
  secondBounceU: 9,
  secondBounceV: 10,
  bouncedEmitterU: 11,
  bouncedEmitterV: 12,
  secondBouncedEmitterU: 13,
  secondBouncedEmitterV: 14,
  sheenU: 15,
  sheenV: 16,
  sheenOrNot: 17,
  side: 18,
  secondSide: 19,
  bouncedMoment: 20,
  secondBouncedMoment: 21,
  hazeAlong: 22,
  hazeChoice: 23,
  hazeTurn: 24,
} as const;
/** Dimensions of the direct light, which share one sequence. */
const dimensions = 7;

/**
 * Primes whose square roots step the two numbers of the first bounce's way. Chosen among those under 114 as the pair that
 * falls least into step with pixel, time and lens and with each other over the first thousand samples; see the test.
 */
const bouncePrimes = [19, 41];

/** Root of x^(d+1) = x + 1: the generalised golden ratio whose powers make an evenly spread additive sequence. */
const ratio = (() => {
  let x = 1.5;
  for (let i = 0; i < 64; i++) x = (1 + x) ** (1 / (dimensions + 1));
  return x;
})();

/** Step of the additive sequence in each dimension, as a fraction of 2^32; the shaders are given the same numbers. */
export const sequenceSteps: readonly number[] = [
  ...Array.from({ length: dimensions }, (_, d) => ratio ** -(d + 1)),
  ...bouncePrimes.map((prime) => Math.sqrt(prime) % 1),
].map((step) => Math.floor(step * 2 ** 32));

/** A 32-bit hash of a pixel and a dimension, so that neighbours do not share a pattern (PCG output step, O'Neill 2014). */
export const pixelHash = (x: number, y: number, dim: number): number => {
  let h = (Math.imul(x, 0x9e3779b1) ^ Math.imul(y, 0x85ebca6b) ^ Math.imul(dim + 1, 0xc2b2ae35)) >>> 0;
  h = (Math.imul(h, 747796405) + 2891336453) >>> 0;
  h = Math.imul((h >>> ((h >>> 28) + 4)) ^ h, 277803737) >>> 0;
  return ((h >>> 22) ^ h) >>> 0;
};

/** Upper 24 bits as a number in [0, 1): exact in 32-bit floats, so that both renderers get the same one. */
const unit = (bits: number): number => (bits >>> 8) / 16777216;

/** A number in [0, 1) for a pixel alone, such as its noise. */
export const pixelNumber = (x: number, y: number, dim: number): number => unit(pixelHash(x, y, dim));

/**
 * Number of a sample in one dimension, in [0, 1). Sample 0 is the middle of everything: the first picture is hard-edged
 * and clean. Later samples follow an additive sequence shifted per pixel.
 */
export const sampleNumber = (sample: number, dim: number, x: number, y: number): number =>
  sample === 0 ? 0.5 : scatteredNumber(sample, dim, x, y);

/**
 * A number by chance alone. More than two or three dimensions of additive sequences fall into step with each other; what
 * is followed after the first bounce is spread by chance instead, which never does.
 */
export const chanceNumber = (sample: number, dim: number, x: number, y: number): number =>
  unit(pixelHash(x, y, dim + 64 * (sample + 1)));

/** The same without a middle: sample 0 lies anywhere too. For light that has no middle to begin with. */
export const scatteredNumber = (sample: number, dim: number, x: number, y: number): number =>
  unit((Math.imul(sample, sequenceSteps[dim] as number) + pixelHash(x, y, dim)) >>> 0);

/**
 * Where the moments of a sample lie in their parts of the on-time, in [0, 1): shared by all pixels, the middle for sample 0.
 * The bits of the number turned round (van der Corput 1935), so that 2, 4, 8 … samples together are a grid of even steps.
 */
export const momentShift = (sample: number): number => {
  let [shift, step] = [0.5, 0.5];
  for (let bits = sample; bits > 0; bits = Math.floor(bits / 2)) {
    shift += (bits % 2) * step;
    step /= 2;
  }
  return shift % 1;
};
