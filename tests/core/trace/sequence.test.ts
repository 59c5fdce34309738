import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { dimension, pixelHash, sampleNumber, sequenceSteps, sharedSampleNumber } from '../../../core/trace/sequence.ts';

const count = 4096;
const dims = Object.values(dimension);
const numbersOf = (dim: number, x: number, y: number) =>
  Array.from({ length: count }, (_, s) => sampleNumber(s + 1, dim, x, y));
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

/** Star discrepancy in one dimension: the most that any share of numbers below a mark departs from the mark. */
const discrepancy = (values: readonly number[]) => {
  const sorted = [...values].sort((a, b) => a - b);
  return Math.max(
    ...sorted.map((v, i) => Math.max(Math.abs((i + 1) / sorted.length - v), Math.abs(v - i / sorted.length))),
  );
};

/** Most that the count of pairs in any rectangle from the corner, on a grid of marks, departs from its area. */
const discrepancy2 = (a: readonly number[], b: readonly number[]) => {
  let most = 0;
  for (let i = 1; i <= 16; i++)
    for (let j = 1; j <= 16; j++) {
      const inside = a.filter((v, k) => v < i / 16 && (b[k] as number) < j / 16).length;
      most = Math.max(most, Math.abs(inside / a.length - (i * j) / 256));
    }
  return most;
};

describe('sampleNumber', () => {
  it('is the middle of everything for sample 0', () => {
    for (const dim of dims) {
      expect(sampleNumber(0, dim, 3, 17)).toBe(0.5);
      expect(sharedSampleNumber(0, dim)).toBe(0.5);
    }
  });

  it.each(dims)('dimension %d: numbers 1 to 4096 lie in [0, 1), mean 0.5 (abs 0.01)', (dim) => {
    for (const [x, y] of [
      [0, 0],
      [1, 0],
      [640, 359],
    ] as const) {
      const numbers = numbersOf(dim, x, y);
      expect(numbers.every((v) => v >= 0 && v < 1)).toBe(true);
      expect(Math.abs(mean(numbers) - 0.5)).toBeLessThanOrEqual(0.01);
    }
    const shared = Array.from({ length: count }, (_, s) => sharedSampleNumber(s + 1, dim));
    expect(Math.abs(mean(shared) - 0.5)).toBeLessThanOrEqual(0.01);
  });

  // a random stream of n numbers has a star discrepancy of about 0.87 / sqrt(n) (Kolmogorov)
  it.each(dims)('dimension %d is spread at least four times as evenly as random numbers', (dim) => {
    const random = seededRandom(11);
    const chance = discrepancy(Array.from({ length: count }, random));
    expect(chance).toBeGreaterThan(0.4 / Math.sqrt(count));
    expect(discrepancy(numbersOf(dim, 5, 9))).toBeLessThanOrEqual(chance / 4);
  });

  it.each([
    ['pixel', dimension.pixelX, dimension.pixelY],
    ['emitter', dimension.emitterU, dimension.emitterV],
    ['emitter and time', dimension.emitterU, dimension.time],
    ['lens', dimension.lensU, dimension.lensV],
  ])('%s: pairs fill the square at least three times as evenly as random pairs', (_, a, b) => {
    const random = seededRandom(12);
    const [c, d] = [Array.from({ length: count }, random), Array.from({ length: count }, random)];
    expect(discrepancy2(numbersOf(a, 2, 2), numbersOf(b, 2, 2))).toBeLessThanOrEqual(discrepancy2(c, d) / 3);
  });
});

describe('pixelHash', () => {
  it('shifts pixels apart: 64 x 64 pixels, no value twice, mean 0.5 (abs 0.02), neighbours unlike (|r| <= 0.06)', () => {
    for (const dim of dims) {
      const side = 64;
      const shifts = Array.from(
        { length: side * side },
        (_, k) => pixelHash(k % side, Math.floor(k / side), dim) / 2 ** 32,
      );
      expect(new Set(shifts).size).toBe(side * side);
      expect(Math.abs(mean(shifts) - 0.5)).toBeLessThanOrEqual(0.02);
      const pairs = shifts.slice(1).map((v, k) => (v - 0.5) * ((shifts[k] as number) - 0.5));
      expect(Math.abs(mean(pairs) * 12)).toBeLessThanOrEqual(0.06);
    }
  });
});

describe('sequenceSteps', () => {
  it('are seven powers of the root of x^8 = x + 1, then the fractions of the roots of 2, 3, 5, 7 (abs 2e-9)', () => {
    const all = sequenceSteps.map((step) => step / 2 ** 32);
    expect(all).toHaveLength(11);
    [2, 3, 5, 7].forEach((prime, i) => {
      expect(Math.abs((all[7 + i] as number) - (Math.sqrt(prime) % 1))).toBeLessThanOrEqual(2e-9);
    });
    const steps = all.slice(0, 7);
    const root = 1 / (steps[0] as number);
    expect(Math.abs(root ** 8 - root - 1)).toBeLessThanOrEqual(1e-7);
    steps.forEach((step, d) => {
      expect(Math.abs(step - root ** -(d + 1))).toBeLessThanOrEqual(2e-9);
    });
  });
});
