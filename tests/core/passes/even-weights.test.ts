import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenWeights } from '../../../core/passes/even-weights.ts';

const dosesOf = (matrix: readonly (readonly number[])[], weights: readonly number[]) =>
  matrix.map((row) => row.reduce((sum, a, k) => sum + a * (weights[k] as number), 0));

describe('evenWeights', () => {
  it('of places that each leg lights alone: as the inverse of the light, 1 and 4 lx want 4 to 1 (rel 1e-9)', () => {
    const weights = evenWeights([
      [1, 0],
      [0, 4],
    ]);
    expect(weights[0]).toBeCloseTo(0.8, 9);
    expect(weights[1]).toBeCloseTo(0.2, 9);
  });

  it('finds weights that make it exactly even where there are such (1 % of the dose; 100 runs, seed 11)', () => {
    // rows of a band, scaled so that known weights make every sum one
    const known = fc.array(fc.double({ min: 0.2, max: 5, noNaN: true }), { minLength: 3, maxLength: 12 });
    fc.assert(
      fc.property(known, (weights) => {
        const matrix = weights.map((_, j) => {
          const row = weights.map((__, k) => [1, 0.3, 0.05][Math.abs(j - k)] ?? 0);
          const sum = row.reduce((all, a, k) => all + a * (weights[k] as number), 0);
          return row.map((a) => a / sum);
        });
        const doses = dosesOf(matrix, evenWeights(matrix));
        expect(Math.max(...doses) / Math.min(...doses)).toBeLessThan(1.01);
      }),
      { numRuns: 100, seed: 11 },
    );
  });

  it('keeps weights at nought or above, together one, and leaves out a leg that lights nothing', () => {
    const weights = evenWeights([
      [1, 0, 2],
      [3, 0, 0.1],
      [2, 0, 1],
    ]);
    expect(weights.every((weight) => weight >= 0)).toBe(true);
    expect(weights[1]).toBe(0);
    expect(weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
  });

  it('never makes the spread worse than equal weights where it can be evened (100 runs, seed 3), and is the same each time', () => {
    const lux = fc.double({ min: 0.01, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(lux, { minLength: 2, maxLength: 9 }), (peaks) => {
        const matrix = peaks.map((peak, j) => peaks.map((_, k) => (j === k ? peak : 0)));
        const spread = (doses: readonly number[]) => Math.max(...doses) / Math.min(...doses);
        const evened = evenWeights(matrix);
        const equal = peaks.map(() => 1 / peaks.length);
        expect(spread(dosesOf(matrix, evened))).toBeLessThanOrEqual(spread(dosesOf(matrix, equal)) * (1 + 1e-9));
        expect(evenWeights(matrix)).toEqual(evened);
      }),
      { numRuns: 100, seed: 3 },
    );
  });
});
