import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mesh } from '../../../../core/geometry/mesh.ts';
import { type SheetShape, sheetLiftMetres } from '../../../../core/geometry/relief/sheet.ts';
import { normalErrors, trianglesOf } from '../../support/meshes.ts';
import { maxTriangles, sheetShape, sheets, smoothSheets } from './sheets.ts';

const corners = ({ positions }: Mesh): [x: number, up: number, z: number][] =>
  Array.from({ length: positions.length / 3 }, (_, i) => [
    positions[3 * i] as number,
    positions[3 * i + 1] as number,
    positions[3 * i + 2] as number,
  ]);

const extremes = (mesh: Mesh) => {
  let [low, high, away] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (const [x, up, z] of corners(mesh)) {
    low = Math.min(low, up);
    high = Math.max(high, up);
    away = Math.max(away, Math.hypot(x, z));
  }
  return { low, high, away };
};

/** Shapes over the whole range of the document. Distances are spread evenly over their logarithms. */
const shapes: fc.Arbitrary<SheetShape> = fc
  .record({
    height: fc.double({ min: 0, max: 3, noNaN: true }),
    spacing: fc.double({ min: Math.log(0.02), max: Math.log(50), noNaN: true }),
    radius: fc.double({ min: Math.log(0.1), max: Math.log(500), noNaN: true }),
    seed: fc.nat(4294967295),
  })
  .map(({ height, spacing, radius, seed }) => ({
    heightMetres: height,
    spacingMetres: Math.exp(spacing),
    radiusMetres: Math.exp(radius),
    seed,
    maxTriangles,
  }));

describe.each(sheets)('a sheet of %s', (_, make) => {
  it('is finite, within its circle, between the plane and its height plus the lift, and of at most 30,000 triangles, whatever the shape (30 shapes, seed 1)', () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const mesh = make(shape);
        const count = mesh.positions.length / 9;
        expect(count).toBeGreaterThan(0);
        expect(count).toBeLessThanOrEqual(maxTriangles);
        expect(mesh.positions.every(Number.isFinite) && mesh.normals.every(Number.isFinite)).toBe(true);
        const { low, high, away } = extremes(mesh);
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeGreaterThan(0);
        expect(high).toBeLessThanOrEqual(shape.heightMetres + sheetLiftMetres + 1e-12);
        expect(away).toBeLessThanOrEqual(shape.radiusMetres * (1 + 1e-12));
      }),
      { numRuns: 30, seed: 1 },
    );
  });

  it('uses most of its height, and most of its circle where 30,000 triangles reach', () => {
    const { high, away } = extremes(make({ ...sheetShape, heightMetres: 0.1, spacingMetres: 0.5 }));
    expect(high).toBeGreaterThan(0.07);
    expect(away).toBeGreaterThan(4.2);
  });

  it('is the same for the same seed, another for another', () => {
    const mesh = make(sheetShape);
    expect(make({ ...sheetShape }).positions).toEqual(mesh.positions);
    expect(make({ ...sheetShape, seed: 8 }).positions).not.toEqual(mesh.positions);
  });

  it('faces up wherever it does not stand upright, and its normals are of unit length (1e-9)', () => {
    const mesh = make(sheetShape);
    expect(normalErrors(mesh).fromUnit).toBeLessThan(1e-9);
    for (let i = 1; i < mesh.normals.length; i += 3) expect(mesh.normals[i]).toBeGreaterThan(-1e-9);
  });
});

/** How many triangles each edge has on it; corners within a micrometre are one. */
const edgeUse = (mesh: Mesh): { once: [number, number, number][]; most: number } => {
  const name = (p: readonly number[]) => p.map((v) => Math.round(v * 1e6) + 0).join();
  const use = new Map<string, { count: number; at: [number, number, number] }>();
  for (const triangle of trianglesOf(mesh))
    for (let k = 0; k < 3; k++) {
      const [a, b] = [triangle[k], triangle[(k + 1) % 3]] as unknown as [number[], number[]];
      const key = [name(a), name(b)].sort().join('>');
      const entry = use.get(key) ?? { count: 0, at: a as [number, number, number] };
      entry.count++;
      use.set(key, entry);
    }
  const all = [...use.values()];
  return {
    once: all.filter(({ count }) => count === 1).map(({ at }) => at),
    most: Math.max(...all.map((e) => e.count)),
  };
};

describe.each(smoothSheets)('a sheet of %s, as one surface', (_, make) => {
  it.each([
    ['even', sheetShape],
    ['wide', { ...sheetShape, radiusMetres: 12 }],
    ['coarse', { ...sheetShape, spacingMetres: 3 }],
  ])(
    'has no crack inside: every edge is shared by two triangles but those of the rim, which lies on the ground (%s)',
    (_name, shape) => {
      const { once, most } = edgeUse(make(shape));
      expect(most).toBe(2);
      expect(once.length).toBeGreaterThan(12);
      expect(Math.max(...once.map(([, up]) => up))).toBeLessThan(1e-9);
    },
  );

  it('nowhere folds over itself; at a dented rim by a hair at most (0.02 mm high, a hundred-thousandth of its area)', () => {
    const mesh = make(sheetShape);
    const seen = trianglesOf(mesh).map((corners) => {
      const [a, b, c] = corners;
      const area = ((b[2] - a[2]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[2] - a[2])) / 2;
      return { area, up: Math.max(a[1], b[1], c[1]) };
    });
    const folded = seen.filter(({ area }) => area <= 0);
    const sum = (areas: readonly number[]) => areas.reduce((total, area) => total + area, 0);
    const whole = sum(seen.map(({ area }) => Math.abs(area)));
    expect(whole).toBeGreaterThan(0.65 * Math.PI * sheetShape.radiusMetres ** 2);
    expect(Math.abs(sum(folded.map(({ area }) => area)))).toBeLessThan(1e-5 * whole);
    expect(Math.max(0, ...folded.map(({ up }) => up))).toBeLessThan(2e-5);
  });
});
