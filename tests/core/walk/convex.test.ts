import { describe, expect, it } from 'vitest';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { convexOf, crosses, distanceToHull, grown, holds, overlap } from '../../../core/walk/convex.ts';

const square = (east: number, north: number, half: number): GroundPoint[] => [
  [east - half, north - half],
  [east + half, north - half],
  [east + half, north + half],
  [east - half, north + half],
];

describe('a figure without area', () => {
  it.each<[string, GroundPoint[]]>([
    ['a point', [[1, 2]]],
    [
      'a line',
      [
        [0, 1],
        [2, 3],
      ],
    ],
  ])('%s has no inside: nothing lies in it, and a way may lead through', (_, corners) => {
    const figure = convexOf(corners);
    expect(figure.edges.every(Number.isFinite)).toBe(true);
    expect(holds(figure, [1, 2])).toBe(false);
    expect(crosses(figure, [0, 3], [2, 1])).toBe(false);
    expect(crosses(figure, [-1, 0], [3, 4])).toBe(false);
  });
});

describe('grown', () => {
  it('by nothing is the hull itself', () => {
    expect(new Set(grown(square(3, 4, 1), 0).corners)).toEqual(new Set(square(3, 4, 1)));
  });
  it('by a distance reaches so far on all sides, and at most 3.6 % farther', () => {
    const [west, south, east, north] = grown([[3, 4]], 2).box;
    for (const reach of [3 - west, 4 - south, east - 3, north - 4]) {
      expect(reach).toBeGreaterThanOrEqual(2 - 1e-12);
      expect(reach).toBeLessThanOrEqual(2 * 1.036);
    }
  });
});

describe('overlap', () => {
  const one = convexOf(square(0, 0, 1));
  const diamond = (east: number, north: number) =>
    convexOf([
      [east - 1, north],
      [east, north - 1],
      [east + 1, north],
      [east, north + 1],
    ]);
  it.each([
    ['far apart', convexOf(square(5, 0, 1)), false],
    ['side by side, touching', convexOf(square(2, 0, 1)), false],
    ['one over the other', convexOf(square(0.5, 1.9, 1)), true],
    ['one in the other', convexOf(square(0, 0, 0.1)), true],
    // the diamond's boxes overlap; its slant side lies off the square's corner by (3.2 - 3) / sqrt 2
    ['corner by a slant side', diamond(1.6, 1.6), false],
    ['corner over a slant side', diamond(1.4, 1.4), true],
  ])('%s: %s', (_, other, isOver) => {
    expect(overlap(one, other)).toBe(isOver);
    expect(overlap(other, one)).toBe(isOver);
  });
});

describe('distanceToHull', () => {
  it('of a single point is that to the point, of a line that to its nearest place (3, 4, 5)', () => {
    expect(distanceToHull([[1, 1]], [4, 5])).toBeCloseTo(5, 12);
    const line: GroundPoint[] = [
      [0, 0],
      [10, 0],
    ];
    expect(distanceToHull(line, [4, 3])).toBeCloseTo(3, 12);
    expect(distanceToHull(line, [13, 4])).toBeCloseTo(5, 12);
  });
});
