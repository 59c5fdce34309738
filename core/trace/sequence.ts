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
/** For each dimension that is spread, the first of the pair that it fills a square with: it itself, or the one before. */
export const firstOfPair: readonly number[] = [
  dimension.pixelX,
  dimension.pixelX,
  dimension.emitterU,
  dimension.emitterU,
  dimension.moment,
  dimension.lensU,
  dimension.lensU,
  dimension.bounceU,
  dimension.bounceU,
];

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

/** The bits of a 32-bit number in reverse. */
const turnedRound = (bits: number): number => {
  let v = ((bits >>> 1) & 0x55555555) | ((bits & 0x55555555) << 1);
  v = ((v >>> 2) & 0x33333333) | ((v & 0x33333333) << 2);
  v = ((v >>> 4) & 0x0f0f0f0f) | ((v & 0x0f0f0f0f) << 4);
  v = ((v >>> 8) & 0x00ff00ff) | ((v & 0x00ff00ff) << 8);
  return ((v >>> 16) | (v << 16)) >>> 0;
};

/**
 * Owen's scrambling of a number whose bits are turned round: each bit is flipped or not by those before it (by the hash of
 * Laine and Karras 2011, with the constants of Burley 2020).
 */
const scrambled = (bits: number, seed: number): number => {
  let v = (bits + seed) | 0;
  v ^= Math.imul(v, 0x6c50b47c);
  v ^= Math.imul(v, 0xb82f1e52);
  v ^= Math.imul(v, 0xc7afe638);
  v ^= Math.imul(v, 0x8d22f6e6);
  return v >>> 0;
};

/** Pascal's triangle by odd and even, times the bits: what makes a second dimension of a first (Sobol 1967). */
const pascal = (bits: number): number => {
  let v = bits ^ ((bits >>> 1) & 0x55555555);
  v ^= (v >>> 2) & 0x33333333;
  v ^= (v >>> 4) & 0x0f0f0f0f;
  v ^= (v >>> 8) & 0x00ff00ff;
  return (v ^ (v >>> 16)) >>> 0;
};

/** For the order of samples, which is another one in each pair. */
export const orderDimension = 25;

/**
 * Number of a sample in one dimension, in [0, 1). Sample 0 is the middle of everything: the first picture is hard-edged
 * and clean. Later samples are scattered.
 */
export const sampleNumber = (sample: number, dim: number, x: number, y: number): number =>
  sample === 0 ? 0.5 : scatteredNumber(sample, dim, x, y);

/** A number by chance alone: for what is followed after the first bounce, and what little hangs on. */
export const chanceNumber = (sample: number, dim: number, x: number, y: number): number =>
  unit(pixelHash(x, y, dim + 64 * (sample + 1)));

/**
 * The same without a middle: sample 0 lies anywhere too. For light that has no middle to begin with. Each pair of dimensions
 * is Sobol's net of two, scrambled for the pixel and taken in an order of its own, so that pairs are never in step (Owen
 * 1995; Burley, Practical Hash-based Owen Scrambling, 2020). One that stands alone is the first of such a pair.
 */
export const scatteredNumber = (sample: number, dim: number, x: number, y: number): number => {
  const first = firstOfPair[dim] as number;
  const order = turnedRound(scrambled(turnedRound(sample), pixelHash(x, y, orderDimension + first)));
  return unit(turnedRound(scrambled(dim === first ? order : pascal(order), pixelHash(x, y, dim))));
};

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
