import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import {
  chanceNumber,
  dimension,
  firstOfPair,
  pixelHash,
  sampleNumber,
  scatteredNumber,
} from '../../../core/trace/sequence.ts';

const count = 4096;
const dims: readonly number[] = Object.values(dimension);
/** Those that are spread by a sequence; the rest are drawn by chance. */
const spreadDims = dims.filter((dim) => dim < firstOfPair.length);
const chanceDims = dims.filter((dim) => dim >= firstOfPair.length);
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
      dim < firstOfPair.length
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

// a (0, m, 2)-net in base 2: one point in each of the 2^m boxes of every shape that halvings give (Sobol 1967, Niederreiter 1987)
describe('scatteredNumber', () => {
  const pixels = [
    [0, 0],
    [7, 3],
    [1919, 1079],
  ] as const;
  const pairs = [
    [dimension.pixelX, dimension.pixelY],
    [dimension.emitterU, dimension.emitterV],
    [dimension.lensU, dimension.lensV],
    [dimension.bounceU, dimension.bounceV],
  ] as const;

  it.each([1, 4, 6, 9])('pairs are nets: the first 2^%d samples lie one in each box, whatever its shape', (m) => {
    for (const [x, y] of pixels)
      for (const [a, b] of pairs) {
        const points = Array.from({ length: 2 ** m }, (_, s) => [a, b].map((dim) => scatteredNumber(s, dim, x, y)));
        for (let across = 0; across <= m; across++) {
          const boxes = points.map(
            ([u = 0, v = 0]) => `${Math.floor(u * 2 ** across)} ${Math.floor(v * 2 ** (m - across))}`,
          );
          expect(new Set(boxes).size).toBe(2 ** m);
        }
      }
  });

  it('so is each next such run of samples, and the moment alone, one in each part', () => {
    for (let run = 1; run < 8; run++) {
      const parts = (dim: number) =>
        new Set(Array.from({ length: 16 }, (_, s) => Math.floor(16 * scatteredNumber(16 * run + s, dim, 5, 9))));
      for (const dim of spreadDims) expect(parts(dim).size).toBe(16);
    }
  });

  it('neighbours take other numbers in another order: over 64 x 64 pixels one sample fills the square as chance does', () => {
    const of = (dim: number) =>
      Array.from({ length: 4096 }, (_, k) => scatteredNumber(3, dim, k % 64, Math.floor(k / 64)));
    for (const [a, b] of pairs) expect(discrepancy2(of(a), of(b))).toBeLessThanOrEqual(1.5 / Math.sqrt(4096));
  });
});
