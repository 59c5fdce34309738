import { describe, expect, it } from 'vitest';
import { length, sub, type Vec3 } from '../../../../core/geometry/vec.ts';
import { enclosedVolume, meshOf, openEdges, trianglesOf } from '../../support/meshes.ts';

const ball = { kind: 'sphere', radiusMetres: 2 } as const;
const rough = { heightMetres: 0.15, sizeMetres: 0.8, seed: 5 };
const away = (mesh: ReturnType<typeof meshOf>) =>
  trianglesOf(mesh)
    .flat()
    .map((p) => length(sub(p, [0, 2, 0])) - 2);

describe('a rough ball', () => {
  const mesh = meshOf({ ...ball, rough });

  it('stands out and in by the height at most, and by more than half of it somewhere', () => {
    const moves = away(mesh);
    expect(Math.max(...moves)).toBeLessThanOrEqual(rough.heightMetres + 1e-9);
    expect(Math.min(...moves)).toBeGreaterThanOrEqual(-rough.heightMetres - 1e-9);
    expect(Math.max(...moves)).toBeGreaterThan(rough.heightMetres / 2);
    expect(Math.min(...moves)).toBeLessThan(-rough.heightMetres / 2);
  });

  it('holds a volume between those of balls as much smaller and larger, within 5 % of the even one', () => {
    const even = (4 / 3) * Math.PI * 8;
    expect(Math.abs(enclosedVolume(mesh) / even - 1)).toBeLessThan(0.05);
  });

  it('has about five triangles’ sides to a bump', () => {
    const sides = trianglesOf(mesh).flatMap(([a, b, c]) => [length(sub(b, a)), length(sub(c, b)), length(sub(a, c))]);
    const mean = sides.reduce((sum, v) => sum + v, 0) / sides.length;
    expect(rough.sizeMetres / mean).toBeGreaterThan(4);
    expect(rough.sizeMetres / mean).toBeLessThan(7);
  });

  it('is the same for the same seed, another for another, and even at height 0', () => {
    expect(meshOf({ ...ball, rough }).positions).toEqual(mesh.positions);
    expect(meshOf({ ...ball, rough: { ...rough, seed: 6 } }).positions).not.toEqual(mesh.positions);
    expect(meshOf({ ...ball, rough: { ...rough, heightMetres: 0 } })).toEqual(meshOf(ball));
  });

  it('keeps its facets where it has fewer than eight sides', () => {
    const { positions, normals } = meshOf({ ...ball, sides: 7, rough });
    for (let t = 0; t < positions.length; t += 9)
      for (const k of [3, 6])
        for (let axis = 0; axis < 3; axis++)
          expect(Math.abs((normals[t + k + axis] as number) - (normals[t + axis] as number))).toBeLessThan(1e-4);
  });
});

describe('rough parts on the ground', () => {
  it.each([
    { kind: 'box', widthMetres: 1, depthMetres: 1.4, heightMetres: 1 },
    { kind: 'cylinder', radiusMetres: 0.6, heightMetres: 1 },
    {
      kind: 'turned',
      profile: [
        [0.6, 0],
        [0.4, 1],
      ] as [number, number][],
    },
    { kind: 'ring', radiusMetres: 2, tubeRadiusMetres: 0.5 },
  ] as const)('a $kind keeps its whole foot at height 0 (abs 1e-12): no light under it', (part) => {
    const foot = trianglesOf(meshOf({ ...part, rough: { heightMetres: 0.2, sizeMetres: 0.5, seed: 2 } })).filter(
      (corners) => corners.every(([, y]) => Math.abs(y) <= 1e-12),
    );
    // area of what lies on the ground, against the even part’s foot, whose outline wobbles by 20 % at most
    const area = foot.reduce(
      (sum, [a, b, c]) => sum + Math.abs((b[0] - a[0]) * (c[2] - a[2]) - (b[2] - a[2]) * (c[0] - a[0])) / 2,
      0,
    );
    const even = { box: 1.4, cylinder: Math.PI * 0.36, turned: Math.PI * 0.36, ring: 2 * Math.PI * 0.25 }[part.kind];
    expect(Math.abs(area / even - 1)).toBeLessThan(0.25);
  });

  it('a rough sheet moves straight up and down and keeps its outline', () => {
    const mesh = meshOf({ kind: 'plane', widthMetres: 3, depthMetres: 2, rough });
    const flat = trianglesOf(mesh).flat();
    expect(Math.max(...flat.map(([x]) => x))).toBe(1.5);
    expect(Math.min(...flat.map(([, , z]) => z))).toBe(-1);
    expect(Math.max(...flat.map(([, y]) => Math.abs(y)))).toBeLessThanOrEqual(rough.heightMetres);
    const area = trianglesOf(mesh).reduce(
      (sum, [a, b, c]: readonly [Vec3, Vec3, Vec3]) =>
        sum + ((b[2] - a[2]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[2] - a[2])) / 2,
      0,
    );
    expect(area).toBeCloseTo(6, 9);
  });
});

describe('bumps that a part cannot have', () => {
  it.each([
    ['deeper than the part', { ...ball, rough: { heightMetres: 20, sizeMetres: 1, seed: 1 } }],
    [
      'finer than its triangles may be',
      { ...ball, radiusMetres: 500, rough: { heightMetres: 0.01, sizeMetres: 0.01, seed: 1 } },
    ],
    [
      'on a thin post',
      { kind: 'cylinder', radiusMetres: 0.01, heightMetres: 8, rough: { heightMetres: 5, sizeMetres: 0.5, seed: 1 } },
    ],
    [
      'on a sharp cone',
      { kind: 'cone', radiusMetres: 0.3, heightMetres: 8, rough: { heightMetres: 0.3, sizeMetres: 0.5, seed: 1 } },
    ],
  ] as const)('%s are held back: the mesh stays closed, right side out and under 20,000 triangles', (_, part) => {
    const mesh = meshOf(part);
    expect(mesh.positions.every(Number.isFinite)).toBe(true);
    expect(openEdges(mesh)).toBe(0);
    expect(enclosedVolume(mesh)).toBeGreaterThan(0);
    expect(mesh.positions.length / 9).toBeLessThanOrEqual(20_000);
  });
});
