import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StrewnShape, strewnMesh, thinsFrom } from '../../../../core/geometry/relief/strew.ts';
import { add, cross, dot, scale, sub } from '../../../../core/geometry/vec.ts';
import { normalErrors, trianglesOf } from '../../support/meshes.ts';

const kinds = ['stones', 'pebbles', 'gravel', 'tufts'] as const;
const shape = (kind: StrewnShape['kind'], over: Partial<StrewnShape> = {}): StrewnShape => ({
  kind,
  count: 200,
  largeCount: 25,
  heightMetres: [0.02, 0.2],
  radiusMetres: 4,
  seed: 9,
  ...over,
});

/** Top, foot and place of each thing. All of a kind but large pebbles have as many triangles. */
const thingsOf = (kind: StrewnShape['kind'], given: StrewnShape) => {
  const { positions } = strewnMesh(given);
  const triangles = (n: number) => {
    const isLarge = n < given.largeCount;
    return { stones: 20, tufts: 30, pebbles: isLarge ? 60 : 24, gravel: isLarge ? 20 : 6 }[kind];
  };
  let at = 0;
  return Array.from({ length: given.count }, (_, n) => {
    const end = at + 9 * triangles(n);
    let [top, foot, away] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (; at < end; at += 3) {
      const up = positions[at + 1] as number;
      [top, foot] = [Math.max(top, up), Math.min(foot, up)];
      away = Math.min(away, Math.hypot(positions[at] as number, positions[at + 2] as number));
    }
    return { top, foot, away };
  });
};

describe.each(kinds)('strewnMesh of %s', (kind) => {
  it('every thing is as high as was asked: between smallest and largest, both nearly reached (rel 0.15)', () => {
    const tops = thingsOf(kind, shape(kind)).map(({ top }) => top);
    expect(Math.min(...tops)).toBeGreaterThan(0.02 * 0.85);
    expect(Math.max(...tops)).toBeLessThan(0.2 * 1.15);
    expect(Math.min(...tops)).toBeLessThan(0.02 * 1.15);
    expect(Math.max(...tops)).toBeGreaterThan(0.2 * 0.85);
  });

  it('small ones are commoner: more than half are under the middle of both heights', () => {
    const tops = thingsOf(kind, shape(kind)).map(({ top }) => top);
    expect(tops.filter((top) => top < 0.11).length).toBeGreaterThan(120);
  });

  it(kind === 'tufts' ? 'stand on the ground' : 'sink into the ground a little: 2 % to 35 % of their height', () => {
    for (const { top, foot } of thingsOf(kind, shape(kind))) {
      if (kind === 'tufts') expect(foot).toBe(0);
      else {
        expect(-foot / top).toBeGreaterThan(0.02);
        expect(-foot / top).toBeLessThan(0.35);
      }
    }
  });

  it('lies evenly over the inner circle: a quarter of it within half of it (four standard deviations); thins out to the rim', () => {
    const things = thingsOf(kind, shape(kind, { count: 1500, largeCount: 187, heightMetres: [0.005, 0.006] }));
    expect(Math.max(...things.map(({ away }) => away))).toBeLessThan(4);
    const within = (share: number) => things.filter(({ away }) => away < share * 4).length;
    const inner = within(thinsFrom);
    expect(Math.abs(within(thinsFrom / 2) - inner / 4)).toBeLessThan(4 * Math.sqrt(inner * 0.25 * 0.75));
    // the outermost tenth of the radius is 0.19 of the area, and holds under a tenth of what an even spread would put there
    expect(1500 - within(0.9)).toBeLessThan(0.1 * 0.19 * (inner / thinsFrom ** 2));
    expect(inner).toBeGreaterThan(1500 * thinsFrom ** 2);
  });

  it('is the same for the same seed, another for another; normals are of unit length (1e-9)', () => {
    const mesh = strewnMesh(shape(kind));
    expect(strewnMesh(shape(kind)).positions).toEqual(mesh.positions);
    expect(strewnMesh(shape(kind, { seed: 10 })).positions).not.toEqual(mesh.positions);
    expect(normalErrors(mesh).fromUnit).toBeLessThan(1e-9);
  });

  it('is seen from its outer side: faces over the ground look away from the middle of their own thing', () => {
    if (kind === 'tufts') return;
    const given = shape(kind, { count: 60, largeCount: 8 });
    const { positions } = strewnMesh(given);
    const triangles = (n: number) => {
      const isLarge = n < given.largeCount;
      return { stones: 20, pebbles: isLarge ? 60 : 24, gravel: isLarge ? 20 : 6 }[kind as 'stones'];
    };
    let [at, outward, all] = [0, 0, 0];
    for (let n = 0; n < given.count; n++) {
      const faces = trianglesOf({ positions: positions.subarray(at, at + 9 * triangles(n)), normals: positions });
      at += 9 * triangles(n);
      const corners = faces.flat();
      const middle = scale(corners.reduce(add), 1 / corners.length);
      for (const [a, b, c] of faces) {
        all++;
        if (dot(cross(sub(b, a), sub(c, a)), sub(a, middle)) > 0) outward++;
      }
    }
    // a hollow place in a broken stone may look inward
    expect(outward / all).toBeGreaterThan(0.97);
  });

  it('is finite for any count, heights, radius and seed (40 shapes, seed 2)', () => {
    fc.assert(
      fc.property(
        fc.record({
          count: fc.nat(40),
          low: fc.double({ min: 0.002, max: 3, noNaN: true }),
          over: fc.double({ min: 1, max: 100, noNaN: true }),
          radiusMetres: fc.double({ min: 0.1, max: 500, noNaN: true }),
          seed: fc.nat(4294967295),
        }),
        ({ count, low, over, radiusMetres, seed }) => {
          const heightMetres: [number, number] = [low, Math.min(low * over, 3)];
          const mesh = strewnMesh({ kind, count, largeCount: Math.floor(count / 8), heightMetres, radiusMetres, seed });
          expect(mesh.positions.every(Number.isFinite) && mesh.normals.every(Number.isFinite)).toBe(true);
        },
      ),
      { numRuns: 40, seed: 2 },
    );
  });
});
