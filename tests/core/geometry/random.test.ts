import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';

const take = (seed: number, count: number) => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, random);
};

describe('seededRandom', () => {
  it('gives the same stream for a seed and another for the next', () => {
    expect(take(42, 100)).toEqual(take(42, 100));
    expect(take(42, 100)).not.toEqual(take(43, 100));
  });

  // mean and variance of an even distribution: 1/2 and 1/12; four standard errors
  it.each([0, 1, 4294967295])(
    'is even over [0, 1): mean, variance and sixteenths of 40 000 numbers (seed %d)',
    (seed) => {
      const numbers = take(seed, 40_000);
      expect(numbers.every((v) => v >= 0 && v < 1)).toBe(true);
      const mean = numbers.reduce((a, b) => a + b, 0) / numbers.length;
      const variance = numbers.reduce((a, b) => a + (b - mean) ** 2, 0) / numbers.length;
      expect(Math.abs(mean - 0.5)).toBeLessThanOrEqual(4 * Math.sqrt(1 / 12 / numbers.length));
      expect(Math.abs(variance - 1 / 12)).toBeLessThanOrEqual(4 * Math.sqrt(1 / 180 / numbers.length));
      const bins = new Array<number>(16).fill(0);
      for (const v of numbers) bins[Math.floor(v * 16)] = (bins[Math.floor(v * 16)] as number) + 1;
      const chiSquared = bins.reduce((sum, n) => sum + (n - 2500) ** 2 / 2500, 0);
      // 15 degrees of freedom: 37.7 is exceeded once in a thousand
      expect(chiSquared).toBeLessThanOrEqual(37.7);
    },
  );
});
