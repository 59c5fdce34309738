import { describe, expect, it } from 'vitest';
import { boulderPile } from '../../../core/kits/boulder-pile.ts';
import { carvedSlab } from '../../../core/kits/carved-slab.ts';
import { chapel } from '../../../core/kits/chapel.ts';
import { drystoneWall } from '../../../core/kits/drystone-wall.ts';
import { hut } from '../../../core/kits/hut.ts';
import { initialValues, type Kit, settledValues } from '../../../core/kits/kit.ts';
import { naturalArch } from '../../../core/kits/natural-arch.ts';
import { standingStone } from '../../../core/kits/standing-stone.ts';
import { tree } from '../../../core/kits/tree.ts';
import { trianglesOfPart } from '../../../core/setup/detail.ts';
import { subject as subjectSchema } from '../../../core/setup/schema/subject.ts';
import { partMesh } from '../../../core/world/part-mesh.ts';
import { enclosedVolume, openEdges } from '../support/meshes.ts';
import { stageWith } from '../support/scenes.ts';
import { boundsOf, floatingParts, kitSubject, triedValues } from './kit-checks.ts';

const kits: readonly Kit[] = [drystoneWall, hut, chapel, standingStone, carvedSlab, tree, boulderPile, naturalArch];
const seed = 61_203;
const tries = 3;

/** What stands in the ground on purpose, and how deep at most; metres, or a share of the height. */
const sunk: Readonly<Record<string, (values: Readonly<Record<string, number>>, high: number) => number>> = {
  // a stone's lower edge may be turned by 4 degrees
  'drystone-wall': () => 0.08,
  hut: () => 0,
  // fallen stones lie as they fell
  'roofless-chapel': () => 0.45,
  'standing-stone': ({ widthMetres = 0, leanDegrees = 0 }, high) =>
    0.12 * high + widthMetres * Math.abs(Math.sin((leanDegrees * Math.PI) / 180)) * 1.2 + 0.01,
  'carved-slab': () => 0,
  tree: () => 0.15,
  'boulder-pile': (_, high) => 0.4 * high,
  'natural-arch': ({ legMetres = 0 }) => 0.3 + 0.8 * legMetres,
};

describe.each(kits.map((kit) => [kit.name, kit] as const))('kit %s', (name, kit) => {
  it('has first values that lie in their ranges and on a step', () => {
    expect(kit.fields.length).toBeGreaterThanOrEqual(3);
    // a hut has a doorway and windows to be measured too
    expect(kit.fields.length).toBeLessThanOrEqual(name === 'hut' ? 9 : 7);
    expect(settledValues(kit, initialValues(kit))).toEqual(initialValues(kit));
    for (const { min, max, initial, step, choices } of kit.fields) {
      expect(max).toBeGreaterThan(min);
      expect(Math.abs((initial - min) / step - Math.round((initial - min) / step))).toBeLessThan(1e-6);
      if (choices) expect([min, max, step]).toEqual([0, choices.length - 1, 1]);
    }
  });

  it('gives the same for the same seed, and something else for another', () => {
    expect(kitSubject(kit, {}, 7)).toEqual(kitSubject(kit, {}, 7));
    const parts = (own: number) => JSON.stringify(kitSubject(kit, {}, own).parts);
    expect(new Set([1, 2, 3, 4, 5, 6].map(parts)).size).toBeGreaterThanOrEqual(name === 'hut' ? 2 : 6);
  });

  // the clumps of a crown take most
  const mostTriangles = name === 'tree' ? 30_000 : 12_000;
  it(`is made of at most 300 parts and ${mostTriangles} triangles at first`, () => {
    const { parts } = kitSubject(kit);
    const triangles = parts.reduce((sum, part) => sum + trianglesOfPart(part), 0);
    expect(parts.length).toBeLessThanOrEqual(300);
    expect(triangles).toBeLessThanOrEqual(mostTriangles);
    expect(parts.every((part) => part.name !== '')).toBe(true);
  });

  it(`is sound, finite, closed, outside out and not floating for ${2 * tries + 3} sets of numbers (seed ${seed})`, () => {
    for (const values of [initialValues(kit), ...triedValues(kit, tries, seed)]) {
      const subject = kitSubject(kit, values, 3);
      const told = JSON.stringify(values);
      // what was made goes through a file unharmed
      expect(subjectSchema.parse(JSON.parse(JSON.stringify(subject)))).toEqual(subject);
      for (const part of subject.parts) {
        const mesh = partMesh(subject, part);
        const said = `${part.name} ${told}`;
        expect(mesh.positions.every(Number.isFinite) && mesh.normals.every(Number.isFinite), said).toBe(true);
        expect(enclosedVolume(mesh), said).toBeGreaterThan(0);
        expect(openEdges(mesh), said).toBe(0);
      }
      const top = stageWith(subject).subjects[0]?.topMetres ?? 0;
      expect(top, told).toBeGreaterThan(0.3);
      const { low } = boundsOf(subject);
      expect(low[2], told).toBeGreaterThanOrEqual(-(sunk[name]?.(values, top) ?? 0) - 1e-3);
      expect(low[2], told).toBeLessThanOrEqual(1e-3);
      expect(floatingParts(subject), told).toEqual([]);
    }
  }, 240_000);

  it('stands over its origin', () => {
    const { low, high } = boundsOf(kitSubject(kit));
    for (const axis of [0, 1] as const) {
      expect(low[axis]).toBeLessThan(0);
      expect(high[axis]).toBeGreaterThan(0);
    }
  });
});
