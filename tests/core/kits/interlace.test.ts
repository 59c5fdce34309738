import { describe, expect, it } from 'vitest';
import { bandOutline } from '../../../core/kits/shared/band-outline.ts';
import { interlaceBands, type Panel, type Spot } from '../../../core/kits/shared/interlace.ts';
import { signCount, signOutline } from '../../../core/kits/shared/runes.ts';
import { outline } from '../../../core/setup/schema/outline.ts';

const oblong = (columns: number, rows: number): Panel => ({
  columns,
  rows,
  has: (c, r) => c >= 0 && c < columns && r >= 0 && r < rows,
});

const key = ([e, u]: Spot) => `${e.toFixed(3)},${u.toFixed(3)}`;

/** Crossings of a panel: the middles of edges between two of its cells. */
const crossingsOf = ({ columns, rows, has }: Panel): string[] => {
  const all: string[] = [];
  for (let c = 0; c < columns; c++)
    for (let r = 0; r < rows; r++) {
      if (has(c, r) && has(c + 1, r)) all.push(key([c + 1, r + 0.5]));
      if (has(c, r) && has(c, r + 1)) all.push(key([c + 0.5, r + 1]));
    }
  return all;
};

/** How many closed strands the bands make, joined where they end under the same crossing. */
const strandsOf = (bands: readonly (readonly Spot[])[]): number => {
  const group = bands.map((_, i) => i);
  const root = (i: number): number => (group[i] === i ? i : root(group[i] as number));
  const byEnd = new Map<string, number>();
  bands.forEach((band, i) => {
    for (const end of [band[0], band.at(-1)] as [Spot, Spot]) {
      const other = byEnd.get(key(end));
      if (other !== undefined) group[root(i)] = root(other);
      byEnd.set(key(end), i);
    }
  });
  return new Set(bands.map((_, i) => root(i))).size;
};

const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));

const sizes = [
  [2, 3],
  [2, 9],
  [3, 3],
  [4, 6],
  [6, 4],
  [5, 7],
  [6, 9],
] as const;

describe('interlaceBands', () => {
  it.each(sizes)('a plain oblong of %d by %d cells has 2mn - m - n crossings and as many bands', (m, n) => {
    const crossings = crossingsOf(oblong(m, n));
    expect(crossings.length).toBe(2 * m * n - m - n);
    expect(interlaceBands(oblong(m, n)).length).toBe(crossings.length);
  });

  // P. Gerdes, and S. Jablan: a mirror curve in a plain grid of m by n cells has gcd(m, n) components (from memory)
  it.each(sizes)('a plain oblong of %d by %d cells is drawn with gcd(m, n) strands', (m, n) => {
    expect(strandsOf(interlaceBands(oblong(m, n)))).toBe(gcd(m, n));
  });

  it.each([...sizes, [0, 0]] as const)(
    'every crossing has one band over it and two that end under it: %d by %d, or a cross',
    (m, n) => {
      const cross: Panel = {
        columns: 6,
        rows: 9,
        has: (c, r) => c >= 0 && c < 6 && r >= 0 && r < 9 && ((c >= 2 && c < 4) || (r >= 5 && r < 7)),
      };
      const panel = m === 0 ? cross : oblong(m, n);
      const crossings = new Set(crossingsOf(panel));
      const [over, under] = [new Map<string, number>(), new Map<string, number>()];
      const count = (map: Map<string, number>, at: string) => map.set(at, (map.get(at) ?? 0) + 1);
      for (const band of interlaceBands(panel)) {
        for (const end of [band[0], band.at(-1)] as [Spot, Spot]) count(under, key(end));
        for (const spot of band.slice(1, -1)) if (crossings.has(key(spot))) count(over, key(spot));
      }
      for (const at of crossings) expect([over.get(at), under.get(at)], at).toEqual([1, 2]);
      expect(over.size).toBe(crossings.size);
    },
  );
});

describe('bandOutline', () => {
  it('is a simple outline as wide as the band, of its area where it is straight', () => {
    const points = bandOutline(
      [
        [0, 0],
        [3, 4],
      ],
      0.2,
      0.5,
      0.3,
    );
    expect(outline.safeParse(points).success).toBe(true);
    const twice = points.reduce((sum, [x, y], i) => {
      const [nx, ny] = points[(i + 1) % points.length] as [number, number];
      return sum + x * ny - y * nx;
    }, 0);
    // 5 m less half a metre at both ends, 0.2 m wide
    expect(Math.abs(twice) / 2).toBeCloseTo(4 * 0.2, 9);
  });
});

describe('signOutline', () => {
  it.each(Array.from({ length: signCount }, (_, i) => i))('sign %d is a simple outline as high as said', (sign) => {
    const points = signOutline(sign, 0.12, 0.01);
    expect(outline.safeParse(points).success).toBe(true);
    expect(Math.min(...points.map(([, up]) => up))).toBe(0);
    expect(Math.max(...points.map(([, up]) => up))).toBeCloseTo(0.12, 9);
  });
});
