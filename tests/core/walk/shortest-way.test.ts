import { describe, expect, it } from 'vitest';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { convexOf, crosses, holds } from '../../../core/walk/convex.ts';
import { shortestWay } from '../../../core/walk/shortest-way.ts';
import { gridWalk } from './grid-walk.ts';

const rectangle = (west: number, south: number, east: number, north: number) =>
  convexOf([
    [west, south],
    [east, south],
    [east, north],
    [west, north],
  ]);

const roundPost = (east: number, north: number, radius: number, sides: number) =>
  convexOf(
    Array.from({ length: sides }, (_, k): GroundPoint => {
      const turn = (2 * Math.PI * k) / sides;
      return [east + radius * Math.cos(turn), north + radius * Math.sin(turn)];
    }),
  );

describe('shortestWay', () => {
  it('is straight where nothing stands between (Pythagoras: 3, 4, 5)', () => {
    const way = shortestWay([1, 1], [4, 5], [rectangle(5, 0, 6, 9)]);
    expect(way?.metres).toBeCloseTo(5, 12);
    expect(way?.points).toHaveLength(2);
  });

  it('goes round a square pillar by two corners: 2 + 2 √5 from 3 m before its middle to 3 m behind (Pythagoras)', () => {
    const way = shortestWay([-3, 0], [3, 0], [rectangle(-1, -1, 1, 1)]);
    expect(way?.metres).toBeCloseTo(2 + 2 * Math.sqrt(5), 12);
    expect(way?.points).toHaveLength(4);
  });

  it('takes the shorter side of a pillar that stands askew: the corner is 0.5 m off the line, not 1.5 m', () => {
    const way = shortestWay([-3, 0], [3, 0], [rectangle(-0.25, -1.5, 0.25, 0.5)]);
    expect(way?.metres).toBeCloseTo(0.5 + 2 * Math.hypot(2.75, 0.5), 12);
  });

  it('goes along tangents round a disc of 400 sides: 2 √(d² − r²) + r (π − 2 acos(r/d)) (abs 1 mm)', () => {
    for (const [d, r] of [
      [3, 1],
      [5, 4.5],
      [7.6, 3],
    ] as const) {
      const closed = 2 * Math.sqrt(d * d - r * r) + r * (Math.PI - 2 * Math.acos(r / d));
      expect(Math.abs((shortestWay([-d, 0], [d, 0], [roundPost(0, 0, r, 400)])?.metres ?? 0) - closed)).toBeLessThan(
        1e-3,
      );
    }
  });

  it('passes between two pillars that leave a gap, along an edge too, and round both where they overlap', () => {
    const gap = [rectangle(-1, 0, 1, 4), rectangle(-1, -4, 1, 0)];
    expect(shortestWay([-3, 0], [3, 0], gap)?.metres).toBeCloseTo(6, 12);
    const shut = [rectangle(-1, -0.1, 1, 4), rectangle(-1, -4, 1, 0.1)];
    expect(shortestWay([-3, 0], [3, 0], shut)?.metres).toBeCloseTo(2 + 2 * Math.hypot(2, 4), 12);
  });

  it('is null inside a ring of four walls, and leads through the door when one is left open', () => {
    const walls = [rectangle(-3, 2, 3, 3), rectangle(-3, -3, 3, -2), rectangle(-3, -3, -2, 3)];
    expect(shortestWay([0, 0], [9, 0], [...walls, rectangle(2, -3, 3, 3)])).toBeNull();
    const door = [...walls, rectangle(2, -3, 3, 0.5), rectangle(2, 1.5, 3, 3)];
    expect(shortestWay([0, 0], [9, 0], door)?.metres).toBeCloseTo(Math.hypot(2, 0.5) + 1 + Math.hypot(6, 0.5), 12);
  });

  it('is null from inside an obstacle', () => {
    expect(shortestWay([0, 0], [9, 0], [rectangle(-1, -1, 1, 1)])).toBeNull();
  });

  it('is the same length back', () => {
    const random = seededRandom(5);
    const posts = Array.from({ length: 40 }, () => roundPost(20 * random() - 10, 20 * random() - 10, 0.6, 9));
    const [a, b]: GroundPoint[] = [
      [-11, -11],
      [11, 10],
    ];
    const [there, back] = [
      shortestWay(a as GroundPoint, b as GroundPoint, posts),
      shortestWay(b as GroundPoint, a as GroundPoint, posts),
    ];
    expect(there?.metres).toBeCloseTo(back?.metres ?? 0, 9);
    expect(there?.metres).toBeGreaterThan(Math.hypot(22, 21));
  });
});

describe('shortestWay against a fine grid (brute force, seed 11)', () => {
  const half = 5;
  const spacing = 0.125;
  it('30 scenes of 12 boxes and posts: never longer than the grid’s way, at most 3 % shorter, and free', () => {
    const random = seededRandom(11);
    let [bent, walled, worst] = [0, 0, 0];
    for (let scene = 0; scene < 30; scene++) {
      const all = Array.from({ length: 12 }, (_, k) => {
        const [east, north] = [8 * random() - 4, 8 * random() - 4];
        const [wide, deep, turn] = [0.3 + 1.7 * random(), 0.3 + 1.2 * random(), Math.PI * random()];
        if (k % 3 === 0) return roundPost(east, north, 0.3 + 0.7 * random(), 7 + Math.floor(9 * random()));
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const corner = (x: number, y: number): GroundPoint => [east + c * x - s * y, north + s * x + c * y];
        return convexOf([corner(-wide, -deep), corner(wide, -deep), corner(wide, deep), corner(-wide, deep)]);
      });
      const [from, to]: [GroundPoint, GroundPoint] = [
        [-4.75, Math.round(64 * random() - 32) / 8],
        [4.75, Math.round(64 * random() - 32) / 8],
      ];
      // nobody stands in a thing
      const obstacles = all.filter((one) => !holds(one, from) && !holds(one, to));
      const grid = gridWalk(
        from,
        to,
        obstacles.map(({ corners }) => corners),
        half,
        spacing,
      );
      const way = shortestWay(from, to, obstacles);
      if (!way || way.points.some(([x, y]) => Math.max(Math.abs(x), Math.abs(y)) > half)) {
        // out of the grid's reach, or no way at all
        if (!way) expect(grid).toBe(Number.POSITIVE_INFINITY);
        walled++;
        continue;
      }
      if (way.points.length > 2) bent++;
      const added = way.points.slice(1).reduce((sum, p, i) => {
        const q = way.points[i] as GroundPoint;
        expect(obstacles.some((obstacle) => crosses(obstacle, q, p))).toBe(false);
        return sum + Math.hypot(p[0] - q[0], p[1] - q[1]);
      }, 0);
      expect(added).toBeCloseTo(way.metres, 9);
      // the grid's looks may cut a corner by a hair, a tenth of its step
      expect(way.metres).toBeLessThanOrEqual(grid + 0.02);
      worst = Math.max(worst, grid / way.metres - 1);
    }
    console.info(`seed 11: ${bent} bent ways, ${walled} left out, grid at most ${(100 * worst).toFixed(2)} % longer`);
    expect(worst).toBeLessThan(0.03);
    expect(bent).toBeGreaterThan(15);
    expect(walled).toBeLessThan(8);
  });
});
