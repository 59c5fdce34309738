import { describe, expect, it } from 'vitest';
import { planeMesh } from '../../../../core/geometry/parts/plane.ts';
import { partMesh } from '../../../../core/world/part-mesh.ts';
import { closedMeshes, solids } from '../../support/closed-meshes.ts';
import { enclosedVolume, normalErrors, openEdges, trianglesOf } from '../../support/meshes.ts';
import { subjectOf } from '../../support/scenes.ts';

describe.each(closedMeshes)('%s', (_, mesh) => {
  it('is watertight: each edge is met once by a neighbour that runs it the other way', () => {
    expect(trianglesOf(mesh).length).toBeGreaterThanOrEqual(6);
    expect(openEdges(mesh)).toBe(0);
  });

  it('is not inside out', () => {
    expect(enclosedVolume(mesh)).toBeGreaterThan(0);
  });

  it('has corner normals of length 1 (abs 1e-12) on the outer side of their faces', () => {
    const { fromUnit, leastCosine } = normalErrors(mesh);
    expect(fromUnit).toBeLessThanOrEqual(1e-12);
    expect(leastCosine).toBeGreaterThan(0);
  });
});

describe('planeMesh', () => {
  it('lies on the origin and faces up', () => {
    const mesh = planeMesh(3, 2);
    expect([...mesh.normals].filter((_, i) => i % 3 === 1).every((v) => v === 1)).toBe(true);
    expect(normalErrors(mesh).leastCosine).toBe(1);
    expect(openEdges(mesh)).toBe(4);
  });
});

describe('openEdges, the check itself', () => {
  it('finds the three edges round a triangle taken out of a closed mesh', () => {
    const [, mesh] = closedMeshes[0] as (typeof closedMeshes)[number];
    expect(openEdges({ ...mesh, positions: mesh.positions.slice(9) })).toBe(3);
  });
});

describe('the lowest corner of a part', () => {
  const below = new Set(['low arch', 'high arch', 'rough arch']);
  it.each(closedMeshes.filter(([name]) => !below.has(name) && !name.includes('loft')))(
    '%s stands on the ground (abs 1e-12 m; hollows may reach 0.03 m in)',
    (name, { positions }) => {
      const lowest = positions.reduce((low, v, i) => (i % 3 === 1 ? Math.min(low, v) : low), Number.POSITIVE_INFINITY);
      expect(lowest).toBeGreaterThanOrEqual(-1e-12);
      expect(lowest).toBeLessThanOrEqual(name.includes('dimpled') ? 0.03 : 1e-12);
    },
  );
});

describe('a mirrored subject', () => {
  it.each(Object.entries(solids))('%s stays closed and right side out, and holds as much', (name, solid) => {
    const extra = { turnDegrees: 30, tiltDegrees: 10, position: [3, 4, 0.5] };
    const [as, mirrored] = [false, true].map((isMirrored) => {
      const subject = subjectOf('thing', [{ ...solid, turnDegrees: 20 }], { ...extra, mirrored: isMirrored });
      return partMesh(subject, subject.parts[0] as (typeof subject.parts)[number]);
    }) as [ReturnType<typeof partMesh>, ReturnType<typeof partMesh>];
    expect(openEdges(mirrored)).toBe(0);
    expect(Math.abs(enclosedVolume(mirrored) / enclosedVolume(as) - 1)).toBeLessThanOrEqual(1e-9);
    expect(normalErrors(mirrored).leastCosine).toBeCloseTo(normalErrors(as).leastCosine, 6);
    expect(trianglesOf(mirrored).length, name).toBe(trianglesOf(as).length);
  });
});
