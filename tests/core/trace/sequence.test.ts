import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { chanceNumber, dimension, pixelHash, sampleNumber, sequenceSteps } from '../../../core/trace/sequence.ts';

const count = 4096;
const dims: readonly number[] = Object.values(dimension);
/** Those that are spread by a sequence; the rest are drawn by chance. */
const spreadDims = dims.filter((dim) => dim < sequenceSteps.length);
const chanceDims = dims.filter((dim) => dim >= sequenceSteps.length);
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
    }
  });

  it.each(spreadDims)('dimension %d: numbers 1 to 4096 lie in [0, 1), mean 0.5 (abs 0.01)', (dim) => {
    for (const [x, y] of [
      [0, 0],
      [1, 0],
      [640, 359],
    ] as const) {
      const numbers = numbersOf(dim, x, y);
      expect(numbers.every((v) => v >= 0 && v < 1)).toBe(true);
      expect(Math.abs(mean(numbers) - 0.5)).toBeLessThanOrEqual(0.01);
    }
  });

  // a random stream of n numbers has a star discrepancy of about 0.87 / sqrt(n) (Kolmogorov)
  it.each(spreadDims)('dimension %d is spread at least four times as evenly as random numbers', (dim) => {
    const random = seededRandom(11);
    const chance = discrepancy(Array.from({ length: count }, random));
    expect(chance).toBeGreaterThan(0.4 / Math.sqrt(count));
    expect(discrepancy(numbersOf(dim, 5, 9))).toBeLessThanOrEqual(chance / 4);
  });

  it.each([
    ['pixel', dimension.pixelX, dimension.pixelY],
    ['emitter', dimension.emitterU, dimension.emitterV],
    ['emitter and moment', dimension.emitterU, dimension.moment],
    ['lens', dimension.lensU, dimension.lensV],
    ['first bounce', dimension.bounceU, dimension.bounceV],
  ])('%s: pairs fill the square at least three times as evenly as random pairs', (_, a, b) => {
    const random = seededRandom(12);
    const [c, d] = [Array.from({ length: count }, random), Array.from({ length: count }, random)];
    expect(discrepancy2(numbersOf(a, 2, 2), numbersOf(b, 2, 2))).toBeLessThanOrEqual(discrepancy2(c, d) / 3);
  });
});

// what sampling may lose by dimensions in step is shown by a small corner of the square: pairs must find it often enough
/** Direct light draws on these; bounced light on all but the emitter of direct light. */
const directDims = dims.filter((dim) => dim <= dimension.lensV);
const bouncedDims = dims.filter((dim) => dim !== dimension.emitterU && dim !== dimension.emitterV);
const isOnePath = (a: number, b: number) =>
  [directDims, bouncedDims].some((path) => path.includes(a) && path.includes(b));

describe('all pairs of one path', () => {
  const streams = (x: number, y: number) =>
    dims.map((dim) =>
      dim < sequenceSteps.length
        ? numbersOf(dim, x, y)
        : Array.from({ length: count }, (_, s) => chanceNumber(s, dim, x, y)),
    );
  it('no two dimensions are in step: a corner of 0.2 x 0.15 is found by 3 % of 256 samples, rms error over 64 pixels at most that of chance (rel 45 %)', () => {
    const squares = new Map<string, number>();
    for (let pixel = 0; pixel < 64; pixel++) {
      const numbers = streams(pixel, 3 * pixel + 1).map((list) => list.slice(0, 256));
      for (const a of dims)
        for (const b of dims)
          if (a < b && isOnePath(a, b)) {
            const found = (numbers[a] as number[]).filter(
              (v, i) => v < 0.2 && (numbers[b]?.[i] as number) < 0.15,
            ).length;
            const key = `${a} ${b}`;
            squares.set(key, (squares.get(key) ?? 0) + (found / 256 / 0.03 - 1) ** 2);
          }
    }
    // chance: sqrt(0.03 x 0.97 / 256) / 0.03 = 36 %
    const rms = [...squares].map(([key, sum]) => ({ key, rms: Math.sqrt(sum / 64) }));
    expect(rms.filter((pair) => pair.rms > 0.45)).toEqual([]);
  });
  it.each(chanceDims)(
    'dimension %d is drawn by chance: mean 0.5 (abs 0.03), no more even than chance, no less',
    (dim) => {
      const numbers = Array.from({ length: count }, (_, s) => chanceNumber(s, dim, 5, 9));
      expect(Math.abs(mean(numbers) - 0.5)).toBeLessThanOrEqual(0.03);
      expect(discrepancy(numbers)).toBeLessThanOrEqual(2 / Math.sqrt(count));
    },
  );
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
  it('are seven powers of the root of x^8 = x + 1, then the fractions of the roots of 19 and 41 (abs 2e-9)', () => {
    const all = sequenceSteps.map((step) => step / 2 ** 32);
    expect(all).toHaveLength(9);
    [19, 41].forEach((prime, i) => {
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
