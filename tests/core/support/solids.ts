import { expect } from 'vitest';
import type { Mesh } from '../../../core/geometry/mesh.ts';

export type Points = [number, number][];

/** Area of a regular polygon over the square of its circle's radius: what finite sides leave of pi. */
export const polygon = (sides: number) => (sides / 2) * Math.sin((2 * Math.PI) / sides);

export const shoelace = (points: Points) =>
  Math.abs(
    points.reduce((sum, [u, v], i) => {
      const [nextU, nextV] = points[(i + 1) % points.length] as [number, number];
      return sum + u * nextV - v * nextU;
    }, 0) / 2,
  );
export const rimOf = (points: Points) =>
  points.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = points[(i + 1) % points.length] as [number, number];
    return sum + Math.hypot(nextU - u, nextV - v);
  }, 0);

/** Gauss and Legendre's rule with five points on each of many pieces (Abramowitz and Stegun, table 25.4). */
export const integral = (f: (x: number) => number, from: number, to: number): number => {
  const [inner, outer] = [0.5384693101056831, 0.906179845938664];
  const rule = [
    [0, 0.5688888888888889],
    [inner, 0.47862867049936647],
    [-inner, 0.47862867049936647],
    [outer, 0.23692688505618908],
    [-outer, 0.23692688505618908],
  ] as const;
  const step = (to - from) / 64;
  return Array.from({ length: 64 }, (_, k) =>
    rule.reduce((sum, [x, w]) => sum + (w * step * f(from + step * (k + 0.5 + x / 2))) / 2, 0),
  ).reduce((sum, v) => sum + v, 0);
};

/** Holds a measure to its limit: it nears it four times as much for twice the sides (within a tenth), from below. */
export const expectSecondOrder = (make: (sides: number) => Mesh, measure: (mesh: Mesh) => number, exact: number) => {
  const [coarse, fine, finest] = [16, 32, 64].map((n) => exact - measure(make(n))) as [number, number, number];
  expect(finest).toBeGreaterThan(0);
  expect(finest / exact).toBeLessThanOrEqual(0.005);
  expect(Math.abs(coarse / fine - 4)).toBeLessThanOrEqual(0.4);
  expect(Math.abs(fine / finest - 4)).toBeLessThanOrEqual(0.4);
};
