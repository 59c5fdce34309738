import { describe, expect, it } from 'vitest';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { convexOf } from '../../../core/walk/convex.ts';
import { boundsOf, footprintsOfPart, surfaceAt } from '../../../core/walk/footprint.ts';
import { footprintOf, shortestWalk, walkerHalfWidthMetres } from '../../../core/walk/walk.ts';

const square = (half: number): GroundPoint[] => [
  [-half, -half],
  [half, -half],
  [half, half],
  [-half, half],
];

describe('shortestWalk', () => {
  const r = walkerHalfWidthMetres;

  it('keeps a walker’s half width from a thin post: 2 √(d² − r²) + r (π − 2 acos(r/d)), at most 3 % of r more', () => {
    const closed = 2 * Math.sqrt(25 - r * r) + r * (Math.PI - 2 * Math.acos(r / 5));
    const metres = shortestWalk([-5, 0], [5, 0], [footprintOf([[0, 0]])], null)?.metres ?? 0;
    expect(metres).toBeGreaterThanOrEqual(closed);
    expect(metres).toBeLessThan(closed + 0.03 * r);
  });

  it('keeps it from a wall without thickness too', () => {
    const wall = footprintOf([
      [0, -4],
      [0, 4],
    ]);
    const metres = shortestWalk([-3, 0], [3, 0], [wall], null)?.metres ?? 0;
    const touching = 2 * Math.hypot(3, 4);
    expect(metres).toBeGreaterThan(touching);
    expect(metres).toBeLessThan(touching + Math.PI * r);
  });

  it('lets nobody through a gap narrower than 0.6 m, and anybody through a wider one', () => {
    const gates = (gap: number) => [
      footprintOf(
        convexOf([
          [-0.1, gap / 2],
          [0.1, gap / 2],
          [0.1, 9],
          [-0.1, 9],
        ]).corners,
      ),
      footprintOf(
        convexOf([
          [-0.1, -9],
          [0.1, -9],
          [0.1, -gap / 2],
          [-0.1, -gap / 2],
        ]).corners,
      ),
    ];
    expect(shortestWalk([-3, 0], [3, 0], gates(0.61), null)?.metres).toBeCloseTo(6, 9);
    expect(shortestWalk([-3, 0], [3, 0], gates(0.59), null)?.metres).toBeGreaterThan(18);
  });

  it('is not kept off by what an end stands on: a hill under it', () => {
    expect(shortestWalk([-9, 0], [2, 0], [footprintOf(square(5))], null)?.metres).toBeCloseTo(11, 9);
    expect(shortestWalk([-9, 0], [9, 0], [footprintOf(square(5))], null)?.metres).toBeGreaterThan(20);
  });

  it('squeezes by where an end is nearer than a half width, and still goes round the thing', () => {
    const metres = shortestWalk([-1.1, 0], [1.1, 0], [footprintOf(square(1))], null)?.metres ?? 0;
    // at least along the square itself, at most along the square grown by 0.1 m
    expect(metres).toBeGreaterThan(2 + 2 * Math.hypot(0.1, 1));
    expect(metres).toBeLessThan(2.2 + 2 * 1.1);
  });

  it('goes round the back of the camera to keep out of its picture, and across it where an end lies in it', () => {
    const picture = convexOf([
      [0, 0],
      [300, 400],
      [-300, 400],
    ]);
    const across = shortestWalk([-6, 4], [6, 4], [], null);
    expect(across?.metres).toBeCloseTo(12, 12);
    const behind = shortestWalk([-6, 4], [6, 4], [], picture);
    expect(behind?.metres).toBeCloseTo(2 * Math.hypot(6, 4), 9);
    expect(shortestWalk([-1, 4], [6, 4], [], picture)?.metres).toBeCloseTo(7, 12);
  });
});

/** Two triangles each way round a box's sides are enough for its outline: world axes, y up, z south. */
const uprightQuad = (x0: number, z0: number, x1: number, z1: number, low: number, high: number) => [
  ...[x0, low, z0, x1, low, z1, x1, high, z1],
  ...[x0, low, z0, x1, high, z1, x0, high, z0],
];

describe('footprintsOfPart', () => {
  const leaning = Float64Array.from([0, 0, 0, 2, 2, 0, 0, 0, 1]);

  it('cuts a triangle where it leaves the two heights: a slope of 45 degrees from 0.5 m to 1.5 m', () => {
    const [hull = []] = footprintsOfPart(leaning, 0.5, 1.5);
    // up = east on its long side; its other side runs from [2, 2, 0] to [0, 0, 1], so there east = up too
    const easts = hull.map(([east]) => east);
    expect(Math.min(...easts)).toBeCloseTo(0.5, 12);
    expect(Math.max(...easts)).toBeCloseTo(1.5, 12);
    // north = -z: 1 - up / 2 south of the long side
    expect(Math.min(...hull.map(([, north]) => north))).toBeCloseTo(-0.75, 12);
  });

  it('is empty for what is stepped over or walked under', () => {
    const low = Float64Array.from(uprightQuad(0, 0, 3, 0, 0, 0.29));
    const high = Float64Array.from(uprightQuad(0, 0, 3, 0, 2, 9));
    expect(footprintsOfPart(low, 0.3, 1.75)).toEqual([]);
    expect(footprintsOfPart(high, 0.3, 1.75)).toEqual([]);
    expect(boundsOf(high)).toEqual([0, 2, 0, 3, 9, 0]);
  });

  it('finds what is taller than both heights, with no corner between them', () => {
    const wall = Float64Array.from(uprightQuad(-1, 2, 3, 2, 0, 9));
    expect(footprintsOfPart(wall, 0.3, 1.75)[0]?.map((p) => p.map((v) => Number(v.toFixed(9))))).toEqual([
      [-1, -2],
      [3, -2],
    ]);
  });
});

describe('surfaceAt', () => {
  const slope = Float64Array.from([0, 1, 0, 4, 3, 0, 0, 1, -4]);

  it('gives the height of the triangle over a place: a plane through three corners', () => {
    expect(surfaceAt(slope, [1, 1], 9)).toBeCloseTo(1.5, 12);
    expect(surfaceAt(slope, [3, 3], 9)).toBe(Number.NEGATIVE_INFINITY);
  });
  it('takes no height from what stands upright, though the place lies on it', () => {
    const wall = [0, 0, -2, 4, 0, -2, 4, 9, -2];
    expect(surfaceAt(Float64Array.from(wall), [1, 2], 99)).toBe(Number.NEGATIVE_INFINITY);
    expect(surfaceAt(Float64Array.from([...wall, ...slope]), [1, 2], 99)).toBeCloseTo(1.5, 12);
  });
  it('leaves out what is higher than the limit', () => {
    expect(surfaceAt(slope, [1, 1], 1.4)).toBe(Number.NEGATIVE_INFINITY);
  });
});
