import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trianglesOfPart } from '../../../../core/setup/detail.ts';
import { part as schema } from '../../../../core/setup/schema/part.ts';
import type { Part } from '../../../../core/setup/schema/setup.ts';
import { localMesh } from '../../../../core/world/local-mesh.ts';
import { anyPart } from '../../support/any-part.ts';
import { enclosedVolume, exactOpenEdges, normalErrors } from '../../support/meshes.ts';

const seed = 5_2026;
const numRuns = 30;

// what any solid must be, whatever is typed: closed, right side out, finite, and no more than was reckoned with
describe.each(Object.entries(anyPart))(`any %s (${numRuns} of them, seed ${seed})`, (_, arbitrary) => {
  it('becomes as many triangles as the document says, finite and closed, right side out, normals on their faces’ side', () => {
    let taken = 0;
    fc.assert(
      fc.property(arbitrary, (raw) => {
        const read = schema.safeParse(raw);
        if (!read.success) return;
        taken++;
        const part = read.data as Exclude<Part, { kind: 'scan' }>;
        const mesh = localMesh(part);
        expect(mesh.positions.length / 9).toBe(trianglesOfPart(part));
        expect(mesh.positions.every(Number.isFinite)).toBe(true);
        expect(mesh.normals.every(Number.isFinite)).toBe(true);
        const { fromUnit, leastCosine } = normalErrors(mesh);
        expect(fromUnit).toBeLessThanOrEqual(1e-9);
        expect(leastCosine).toBeGreaterThan(0);
        if (part.kind === 'plane') return;
        expect(exactOpenEdges(mesh)).toBe(0);
        expect(enclosedVolume(mesh)).toBeGreaterThan(0);
      }),
      { seed, numRuns },
    );
    expect(taken).toBeGreaterThan(numRuns / 3);
  }, 120_000);
});
