import { describe, expect, it } from 'vitest';
import { contoursOf, deepestPlace, type Place } from '../../../app/web/workers/contours.ts';
import { runsOf } from '../../../app/web/workers/outline-runs.ts';
import { drawnLine, simplifyLine } from '../../../app/web/workers/simplify-line.ts';

const [columns, rows] = [60, 40] as const;
const maskOf = (isIn: (place: Place) => boolean) => ({
  columns,
  rows,
  has: (cell: number) => isIn([((cell % columns) + 0.5) / columns, (Math.floor(cell / columns) + 0.5) / rows]),
});
const areaOf = (ring: readonly Place[]) => {
  let twice = 0;
  for (let i = 1; i < ring.length; i++) {
    const [[ax, ay], [bx, by]] = [ring[i - 1], ring[i]] as [Place, Place];
    twice += ax * by - bx * ay;
  }
  return Math.abs(twice) / 2;
};
/** Circles of the picture: round in cells, not in shares. */
const within =
  (radius: number) =>
  ([x, y]: Place) =>
    Math.hypot((x - 0.5) * columns, (y - 0.5) * rows) < radius;
const cellArea = 1 / (columns * rows);

describe('contoursOf', () => {
  it('a circle is one closed ring; moved to the edge itself, every point lies on the circle (1/16 cell)', () => {
    const disc = within(12.3);
    const rings = contoursOf(maskOf(disc), disc);
    expect(rings).toHaveLength(1);
    const places = (rings[0] ?? []).map(({ place }) => place);
    expect(places.length).toBeGreaterThan(60);
    expect(places.at(-1)).toEqual(places[0]);
    for (const [x, y] of places)
      expect(Math.abs(Math.hypot((x - 0.5) * columns, (y - 0.5) * rows) - 12.3)).toBeLessThanOrEqual(1 / 16);
    // area of a circle in cells, 1 %
    expect(Math.abs(areaOf(places) / cellArea / (Math.PI * 12.3 ** 2) - 1)).toBeLessThan(0.01);
  });

  it('each point lies between a place inside and one outside', () => {
    const disc = within(9);
    for (const { inside, outside } of contoursOf(maskOf(disc), disc).flat()) {
      expect(inside && disc(inside)).toBe(true);
      expect(outside && disc(outside)).toBe(false);
    }
  });

  it('a ring with a hole makes two contours whose areas differ by the ring’s own (1 %)', () => {
    const annulus = (place: Place) => within(15)(place) && !within(6)(place);
    const areas = contoursOf(maskOf(annulus), annulus)
      .map((ring) => areaOf(ring.map(({ place }) => place)) / cellArea)
      .sort((a, b) => b - a);
    expect(areas).toHaveLength(2);
    const ring = (areas[0] as number) - (areas[1] as number);
    expect(Math.abs(ring / (Math.PI * (15 ** 2 - 6 ** 2)) - 1)).toBeLessThan(0.01);
  });

  it('without a look at the thing itself points stay half-way between cells: a rectangle keeps its area but for its corners', () => {
    const block = ([x, y]: Place) => x > 0.25 && x < 0.75 && y > 0.25 && y < 0.75;
    const [ring, ...others] = contoursOf(maskOf(block));
    expect(others).toHaveLength(0);
    // 30 by 20 cells, each corner cut by a triangle of half a cell
    expect(areaOf((ring ?? []).map(({ place }) => place)) / cellArea).toBeCloseTo(600 - 4 / 8, 9);
  });

  it('closes along the picture’s edge, where nothing lies outside', () => {
    const left = ([x]: Place) => x < 0.3;
    const [ring] = contoursOf(maskOf(left), left);
    const onEdge = (ring ?? []).filter(({ place: [x] }) => x === 0);
    expect(onEdge.length).toBeGreaterThan(rows / 2);
    for (const { inside, outside } of onEdge) expect([inside, outside]).toEqual([null, null]);
  });

  it('specks of a few cells are left out', () => {
    expect(contoursOf(maskOf(within(1.1)))).toHaveLength(0);
    expect(contoursOf(maskOf(within(3)))).toHaveLength(1);
  });
});

describe('deepestPlace', () => {
  it('is the middle of a square, and none of nothing', () => {
    const square = ([x, y]: Place) => Math.abs(x - 0.5) * columns < 8.2 && Math.abs(y - 0.3) * rows < 8.2;
    const [x, y] = deepestPlace(maskOf(square)) as Place;
    expect(Math.abs(x - 0.5) * columns).toBeLessThanOrEqual(1);
    expect(Math.abs(y - 0.3) * rows).toBeLessThanOrEqual(1);
    expect(deepestPlace(maskOf(() => false))).toBeNull();
  });
});

describe('simplifyLine', () => {
  const wave = Array.from({ length: 400 }, (_, i): Place => [i / 400, 0.5 + 0.1 * Math.sin(i / 30)]);
  it('keeps first and last, drops most, and strays by no more than the tolerance', () => {
    const kept = simplifyLine(wave, 0.002);
    expect([kept[0], kept.at(-1)]).toEqual([wave[0], wave.at(-1)]);
    expect(kept.length).toBeLessThan(60);
    // both run from left to right: the height of the kept line at each point left out
    for (const [x, y] of wave) {
      const after = kept.findIndex((place) => place[0] >= x);
      const [b, a] = [kept[after] as Place, kept[Math.max(after - 1, 0)] as Place];
      const t = b[0] > a[0] ? (x - a[0]) / (b[0] - a[0]) : 0;
      // upright distance; the wave is at most 53 degrees steep
      expect(Math.abs(a[1] + t * (b[1] - a[1]) - y)).toBeLessThanOrEqual(0.002 / Math.cos((53 * Math.PI) / 180));
    }
  });

  it('a straight line becomes its ends, as a flat list of numbers', () => {
    expect(drawnLine(Array.from({ length: 50 }, (_, i): Place => [i / 50, i / 100]))).toEqual([0, 0, 0.98, 0.49]);
  });
});

describe('runsOf', () => {
  it('cuts a closed row where its marks change, over its end too', () => {
    expect(runsOf(['0', '0', '', '', '', '0'])).toEqual([
      { mark: '', from: 2, to: 4 },
      { mark: '0', from: 5, to: 7 },
    ]);
    expect(runsOf(['0', '0', '0'])).toEqual([{ mark: '0', from: 0, to: 2 }]);
    expect(runsOf([])).toEqual([]);
  });
});
