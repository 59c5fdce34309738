import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { trianglesOfPart, trianglesOfSetup } from '../../../core/setup/detail.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Part, Setup } from '../../../core/setup/schema/setup.ts';
import { partMesh } from '../../../core/world/part-mesh.ts';
import { changed, errorOf, expectError } from './good-setup.ts';
import { richSetup } from './rich-setup.ts';

const rich = parseSetup(JSON.stringify(richSetup()));
const subject = rich.subjects[1] as Setup['subjects'][number];
const [roundBox] = subject.parts as unknown as [Extract<Part, { kind: 'box' }>];
const parts: readonly Part[] = [
  ...subject.parts,
  { ...roundBox, widthMetres: 0.1, depthMetres: 30, heightMetres: 3 },
  { ...roundBox, roundMetres: 0 },
];
const drawn = (mesh: { readonly positions: Float64Array }) => mesh.positions.length / 9;

describe('trianglesOfPart', () => {
  it.each(parts)('is never under what $kind becomes, and at most a twentieth over it', (part) => {
    const most = trianglesOfPart(part);
    const real = drawn(partMesh(subject, part));
    expect(real).toBeLessThanOrEqual(most);
    expect(most).toBeLessThanOrEqual(real * 1.05);
  });
});

describe('parseSetup on setups too fine to draw', () => {
  it('refuses 500 round boxes of 4 m', () => {
    const box = { kind: 'box', widthMetres: 4, depthMetres: 4, heightMetres: 4, roundMetres: 0.2 };
    const text = changed((s) => {
      s.subjects[0].parts = Array(500).fill(box);
    });
    expectError(
      errorOf(text),
      'reference',
      'subjects',
      'would need 24.6 million triangles; at most 1 million are drawn',
    );
  });

  it('refuses 160,000 stones', () => {
    const text = changed((s) => {
      s.ground.relief = Array(8).fill({ ...s.ground.relief[0], count: 20000 });
    });
    expectError(errorOf(text), 'reference', 'ground.relief', 'would need 3.2 million triangles');
  });

  it.each(['three-stones', 'drystone-wall'])('takes the sample %s: it stays under a twentieth of the limit', (name) => {
    const file = resolve(import.meta.dirname, `../../../assets/setups/${name}.json`);
    const { subjects, relief } = trianglesOfSetup(parseSetup(readFileSync(file, 'utf8')));
    expect(subjects + relief).toBeGreaterThan(1000);
    expect(subjects + relief).toBeLessThan(50_000);
  });
});
