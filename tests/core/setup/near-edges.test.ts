import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { part } from '../../../core/setup/schema/part.ts';

type Point = readonly [number, number];

const ring = (east: number, north: number, radius: number, count: number, turn = 0): Point[] =>
  Array.from({ length: count }, (_, i) => {
    const at = turn + (2 * Math.PI * i) / count;
    return [east + radius * Math.cos(at), north + radius * Math.sin(at)];
  });

const square: Point[] = [
  [-50, -50],
  [50, -50],
  [50, 50],
  [-50, 50],
];
const prismOf = (outline: readonly Point[], holes: readonly (readonly Point[])[]) =>
  part.safeParse({ kind: 'prism', outline, holes, heightMetres: 1 });

/** How often a run asks for a length or a least value: a measure of what is compared that is the same on any machine. */
const asked = (run: () => void): number => {
  const { hypot, min } = Math;
  let count = 0;
  const counted =
    (own: (...values: number[]) => number) =>
    (...values: number[]) => {
      count++;
      return own(...values);
    };
  Object.assign(Math, { hypot: counted(hypot), min: counted(min) });
  try {
    run();
  } finally {
    Object.assign(Math, { hypot, min });
  }
  return count;
};

/** Cramer's rule for where two stretches cross; random ones are never parallel. */
const cross = ([a, b]: readonly [Point, Point], [c, d]: readonly [Point, Point]): boolean => {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const [wx, wy, whole] = [c[0] - a[0], c[1] - a[1], ux * vy - uy * vx];
  const [s, t] = [(wx * vy - wy * vx) / whole, (wx * uy - wy * ux) / whole];
  return s >= 0 && s <= 1 && t >= 0 && t <= 1;
};
const edges = (points: readonly Point[]) =>
  points.map((point, i) => [point, points[(i + 1) % points.length] as Point] as const);

/** Whether an outline winds round a point: the angles under which its edges are seen from there add up to a turn. */
const windsRound = ([e, n]: Point, points: readonly Point[]): boolean => {
  const seen = edges(points).map(([a, b]) => {
    const angle = Math.atan2(b[1] - n, b[0] - e) - Math.atan2(a[1] - n, a[0] - e);
    return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
  });
  return Math.abs(seen.reduce((sum, angle) => sum + angle, 0)) > Math.PI;
};
const overlapByTrial = (one: readonly Point[], two: readonly Point[]): boolean =>
  edges(one).some((a) => edges(two).some((b) => cross(a, b))) ||
  windsRound(one[0] as Point, two) ||
  windsRound(two[0] as Point, one);

describe('outlines with holes', () => {
  it('compares few edges of sixteen holes of 256 points that stand apart', () => {
    const holes = Array.from({ length: 16 }, (_, i) => ring((i % 4) * 20 - 30, Math.floor(i / 4) * 20 - 30, 8, 256));
    let taken = true;
    // all pairs of edges would be 136 pairs of outlines at 65,536 each
    expect(asked(() => (taken = prismOf(square, holes).success))).toBeLessThan(500_000);
    expect(taken).toBe(true);
  });

  it('compares few edges of slivers that lie slantwise within each other’s boxes', () => {
    const sliver = (k: number): Point[] => {
      const zigzag = Array.from({ length: 64 }, (_, i) => [(i % 2 ? 9 : -9) - 0.6 * k, (i - 32) / 4] as const);
      const back = zigzag.map(([a, t]) => [a - 0.3, t] as const).reverse();
      return [...zigzag, ...back].map(([a, t]) => [a - t, a + t]);
    };
    let taken = true;
    expect(
      asked(() => {
        taken = prismOf(
          square,
          Array.from({ length: 16 }, (_, k) => sliver(k)),
        ).success;
      }),
    ).toBeLessThan(500_000);
    expect(taken).toBe(true);
  });

  it('takes and refuses two holes as trying all pairs of edges does', () => {
    const random = seededRandom(18);
    let [together, apart] = [0, 0];
    for (let round = 0; round < 400; round++) {
      const star = (): Point[] => {
        const [east, north, count] = [6 * random(), 6 * random(), 3 + Math.floor(12 * random())];
        return ring(0, 0, 1, count, 7 * random()).map(([x, y]) => {
          const out = 0.5 + 2 * random();
          return [east + x * out, north + y * out];
        });
      };
      const [one, two] = [star(), star()];
      const expected = overlapByTrial(one, two);
      expect(prismOf(square, [one, two]).success).toBe(!expected);
      if (expected) together++;
      else apart++;
    }
    expect(Math.min(together, apart)).toBeGreaterThan(100);
  });

  it('takes an outline that lies in one line as it did: not', () => {
    expect(
      prismOf(
        [
          [0, 0],
          [0, 1],
          [0, 2],
        ],
        [],
      ).success,
    ).toBe(false);
  });
});
