import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../../core/geometry/random.ts';
import { planeNoise } from '../../../../core/geometry/relief/plane-noise.ts';

const places = (count: number): [number, number][] => {
  const random = seededRandom(11);
  return Array.from({ length: count }, () => [400 * (random() - 0.5), 400 * (random() - 0.5)]);
};

describe('planeNoise', () => {
  const noise = planeNoise(5);
  const values = places(20_000).map(([x, y]) => noise(x, y));

  it('stays within -1 to 1, is near 0 on average (abs 0.01), and uses more than half of its range', () => {
    expect(Math.max(...values.map(Math.abs))).toBeLessThanOrEqual(1);
    expect(Math.abs(values.reduce((sum, v) => sum + v, 0) / values.length)).toBeLessThan(0.01);
    expect(Math.max(...values)).toBeGreaterThan(0.5);
    expect(Math.min(...values)).toBeLessThan(-0.5);
  });

  it('is 0 at every lattice point, as gradient noise is', () => {
    for (const [x, y] of places(100)) expect(noise(Math.round(x), Math.round(y))).toBeCloseTo(0, 12);
  });

  it('has no jump at cell edges: values and slopes agree on both sides (abs 1e-5)', () => {
    const e = 1e-7;
    for (const [x0, y] of places(200)) {
      const x = Math.round(x0);
      expect(noise(x - e, y)).toBeCloseTo(noise(x + e, y), 5);
      const slope = (at: number) => (noise(at + 1e-5, y) - noise(at - 1e-5, y)) / 2e-5;
      expect(slope(x - 2e-5)).toBeCloseTo(slope(x + 2e-5), 2);
    }
  });

  it('is the same for the same seed, another for another', () => {
    const [again, other] = [planeNoise(5), planeNoise(6)];
    expect(places(50).map(([x, y]) => again(x, y))).toEqual(places(50).map(([x, y]) => noise(x, y)));
    expect(places(50).map(([x, y]) => other(x, y))).not.toEqual(places(50).map(([x, y]) => noise(x, y)));
  });
});
