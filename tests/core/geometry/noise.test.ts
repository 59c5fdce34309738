import { describe, expect, it } from 'vitest';
import { roughNoise } from '../../../core/geometry/noise.ts';
import { seededRandom } from '../../../core/geometry/random.ts';

const size = 0.5;

/** Values along lines in random directions, 40 to a bump, many bumps long. */
const lines = (() => {
  const random = seededRandom(5);
  return Array.from({ length: 100 }, (_, seed) => {
    const [z, turn] = [2 * random() - 1, 2 * Math.PI * random()];
    const level = Math.sqrt(1 - z * z);
    const noise = roughNoise(size, seed);
    return Array.from({ length: 4000 }, (_, k) => {
      const s = (k * size) / 40;
      return noise(s * level * Math.cos(turn), s * level * Math.sin(turn), s * z);
    });
  });
})();
const all = lines.flat();
const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;

describe('roughNoise', () => {
  it('stays within -1 and 1, is 0 on the mean (abs 0.01), and often goes beyond 0.5', () => {
    expect(all.reduce((most, v) => Math.max(most, Math.abs(v)), 0)).toBeLessThanOrEqual(1);
    expect(Math.abs(mean(all))).toBeLessThanOrEqual(0.01);
    expect(mean(all.map((v) => (Math.abs(v) > 0.5 ? 1 : 0)))).toBeGreaterThan(0.15);
  });

  it('has its tops 0.7 to 1.1 sizes apart along a line', () => {
    const tops = lines.map((line) => line.filter((v, k) => v > (line[k - 1] ?? v) && v >= (line[k + 1] ?? v)).length);
    const apart = 4000 / 40 / mean(tops);
    expect(apart).toBeGreaterThan(0.7);
    expect(apart).toBeLessThan(1.1);
  });

  it('is smooth: a fortieth of the way to the next bump it changes by less than a quarter, and twice as near by half that', () => {
    const steps = (every: number) =>
      lines.reduce((most, line) => {
        for (let k = every; k < line.length; k += every)
          most = Math.max(most, Math.abs((line[k] as number) - (line[k - every] as number)));
        return most;
      }, 0);
    expect(steps(1)).toBeLessThan(0.25);
    expect(steps(2) / steps(1)).toBeGreaterThan(1.8);
  });

  it('repeats for the same seed and differs for another', () => {
    const values = (seed: number) =>
      Array.from({ length: 50 }, (_, k) => roughNoise(size, seed)(0.37 * k, 1, -0.2 * k));
    expect(values(7)).toEqual(values(7));
    const [a, b] = [values(7), values(8)];
    const likeness = mean(a.map((v, k) => v * (b[k] as number))) / mean(a.map((v) => v * v));
    expect(Math.abs(likeness)).toBeLessThan(0.4);
  });
});
