import { describe, expect, it } from 'vitest';
import { type Canvas, splat } from '../../../core/trace/splat.ts';

const canvas = (width: number, height: number): Canvas => ({
  width,
  height,
  values: new Float32Array(3 * width * height),
});
const sumOf = ({ values }: Canvas, channel: number): number =>
  values.reduce((sum, v, i) => sum + (i % 3 === channel ? v : 0), 0);

describe('splat', () => {
  // published: a normalised Gaussian and a segment convolved have a sum of 1, whatever the length (sky.md 4.1)
  it.each([
    [0, 0.7],
    [0.03, 0.7],
    [4.25, 0.7],
    [4.25, 0.8],
    [40, 0.8],
    [3, 5],
  ])('a streak %d px long, %d px wide: its values sum up to its light (rel 1e-5)', (length, sigma) => {
    for (const turn of [0, 0.3, 1.2, 2.5]) {
      const picture = canvas(120, 100);
      const [dx, dy] = [(Math.cos(turn) * length) / 2, (Math.sin(turn) * length) / 2];
      splat(picture, { x0: 60.3 - dx, y0: 49.8 - dy, x1: 60.3 + dx, y1: 49.8 + dy }, [1, 2, 0.5], sigma);
      expect(Math.abs(sumOf(picture, 0) - 1)).toBeLessThan(1e-5);
      expect(Math.abs(sumOf(picture, 1) / 2 - 1)).toBeLessThan(1e-5);
      expect(Math.abs(sumOf(picture, 2) / 0.5 - 1)).toBeLessThan(1e-5);
    }
  });

  it('peaks of 0.2487, 0.1164 and 0.0125 for 0, 4.25 and 40 px at 0.8 px wide (sky.md 4.1; 0.5 %)', () => {
    for (const [length, peak] of [
      [0, 0.2487],
      [4.25, 0.1164],
      [40, 0.0125],
    ] as const) {
      const picture = canvas(81, 21);
      splat(picture, { x0: 40.5 - length / 2, y0: 10.5, x1: 40.5 + length / 2, y1: 10.5 }, [1, 1, 1], 0.8);
      expect(Math.abs((picture.values[3 * (10 * 81 + 40)] as number) / peak - 1)).toBeLessThan(0.005);
    }
  });

  it('half of a point on the edge stays out of the picture (1 %)', () => {
    const picture = canvas(20, 20);
    splat(picture, { x0: 0, y0: 10, x1: 0, y1: 10 }, [1, 1, 1], 0.8);
    expect(Math.abs(sumOf(picture, 0) - 0.5)).toBeLessThan(0.01);
  });

  it('leaves a picture alone that it lies beside', () => {
    const picture = canvas(20, 20);
    splat(picture, { x0: -40, y0: 10, x1: -30, y1: 10 }, [1, 1, 1], 0.8);
    expect(sumOf(picture, 0)).toBe(0);
  });
});
