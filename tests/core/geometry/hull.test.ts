import { describe, expect, it, vi } from 'vitest';
import { convexHull, convexHullOfMany, type GroundPoint, isInsideHull } from '../../../core/geometry/hull.ts';
import { seededRandom } from '../../../core/geometry/random.ts';

const turns = (o: GroundPoint, a: GroundPoint, b: GroundPoint) =>
  (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);
const scatter = (seed: number, count: number): GroundPoint[] => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => [10 * random() - 5, 4 * random() - 2] as const);
};

describe('convexHull', () => {
  it('of a square with points inside, on edges and repeated is its four corners, counter-clockwise', () => {
    const square: GroundPoint[] = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ];
    const hull = convexHull([[0.5, 0.5], [0.5, 0], [1, 0.3], ...square, ...square]);
    expect(hull).toHaveLength(4);
    expect(square.every((corner) => hull.some((p) => p[0] === corner[0] && p[1] === corner[1]))).toBe(true);
    const area = hull.reduce((sum, p, i) => {
      const next = hull[(i + 1) % 4] as GroundPoint;
      return sum + (p[0] * next[1] - p[1] * next[0]) / 2;
    }, 0);
    expect(area).toBe(1);
  });

  it.each([1, 2, 3])('turns left at every corner and keeps every point on its left (seed %d)', (seed) => {
    const points = scatter(seed, 300);
    const hull = convexHull(points);
    expect(hull.length).toBeGreaterThan(4);
    hull.forEach((p, i) => {
      const [next, after] = [1, 2].map((k) => hull[(i + k) % hull.length]) as [GroundPoint, GroundPoint];
      expect(turns(p, next, after)).toBeGreaterThan(0);
      expect(points.every((q) => turns(p, next, q) >= -1e-12)).toBe(true);
      expect(points).toContain(p);
    });
  });
});

describe('convexHullOfMany', () => {
  const flat = (points: readonly GroundPoint[]) => Float64Array.from(points.flat());

  it.each([1, 2, 3])(
    'turns left at every corner and keeps every one of 20,000 points on its left (seed %d)',
    (seed) => {
      const points = scatter(seed, 20_000);
      const hull = convexHullOfMany(flat(points));
      hull.forEach((p, i) => {
        const [next, after] = [1, 2].map((k) => hull[(i + k) % hull.length]) as [GroundPoint, GroundPoint];
        expect(turns(p, next, after)).toBeGreaterThan(0);
        expect(points.every((q) => turns(p, next, q) >= -1e-12)).toBe(true);
      });
      expect(hull.every((p) => points.some((q) => q[0] === p[0] && q[1] === p[1]))).toBe(true);
    },
  );

  it('sorts few of a great many points: those in the middle are never put in a list', () => {
    const sort = vi.spyOn(Array.prototype, 'sort');
    convexHullOfMany(flat(scatter(5, 20_000)));
    const sorted = sort.mock.contexts.map((list) => (list as unknown[]).length);
    sort.mockRestore();
    expect(sorted.length).toBeGreaterThan(0);
    expect(Math.max(...sorted)).toBeLessThan(2500);
  });

  it('of points on a circle, on a line, of one point or none is what convexHull gives', () => {
    const circle = Array.from({ length: 100 }, (_, i): GroundPoint => [Math.cos(i), Math.sin(i)]);
    const line = Array.from({ length: 30 }, (_, i): GroundPoint => [i, 2 * i]);
    for (const points of [circle, line, line.slice(0, 1), []])
      expect(convexHullOfMany(flat(points))).toEqual(convexHull(points));
  });
});

describe('isInsideHull', () => {
  it('agrees with the sum of angles round the point for 2000 points (seed 9)', () => {
    const hull = convexHull(scatter(4, 40));
    let inside = 0;
    for (const q of scatter(9, 2000)) {
      const swept = hull.reduce((sum, p, i) => {
        const next = hull[(i + 1) % hull.length] as GroundPoint;
        const [ax, ay, bx, by] = [p[0] - q[0], p[1] - q[1], next[0] - q[0], next[1] - q[1]];
        return sum + Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
      }, 0);
      const expected = Math.abs(swept) > Math.PI;
      if (expected) inside++;
      expect(isInsideHull(hull, q)).toBe(expected);
    }
    expect(inside).toBeGreaterThan(500);
    expect(inside).toBeLessThan(2000);
  });

  it('counts corners as inside, and nothing as inside a line', () => {
    expect(
      isInsideHull(
        [
          [0, 0],
          [1, 0],
          [0, 1],
        ],
        [1, 0],
      ),
    ).toBe(true);
    expect(
      isInsideHull(
        [
          [0, 0],
          [1, 0],
        ],
        [0.5, 0],
      ),
    ).toBe(false);
  });
});
