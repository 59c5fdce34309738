import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { trianglesOfPart, trianglesOfSetup } from '../../../core/setup/detail.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { part } from '../../../core/setup/schema/part.ts';
import type { Part, PartOf, Scan, Subject } from '../../../core/setup/schema/setup.ts';
import { localMesh } from '../../../core/world/local-mesh.ts';
import { solids } from '../support/closed-meshes.ts';
import { changed, errorOf, expectError } from './good-setup.ts';
import { richSetup } from './rich-setup.ts';

const rich = parseSetup(JSON.stringify(richSetup()));
const [roundBox] = (rich.subjects[1] as Subject).parts as unknown as [PartOf<'box'>];
const parts: readonly (readonly [string, Part])[] = [
  ...Object.entries(solids).map(([name, solid]) => [name, part.parse(solid)] as const),
  ['plane', part.parse({ kind: 'plane', widthMetres: 3, depthMetres: 2 })],
  [
    'rough plane',
    part.parse({ kind: 'plane', widthMetres: 3, depthMetres: 2, rough: { heightMetres: 0.1, sizeMetres: 0.4 } }),
  ],
  ['long round box', { ...roundBox, widthMetres: 0.1, depthMetres: 30, heightMetres: 3 }],
];

describe('trianglesOfPart', () => {
  it.each(parts)('is exactly what the %s becomes, worked out without making it', (_, solid) => {
    const mesh = localMesh(solid as Exclude<Part, { kind: 'scan' }>);
    expect(trianglesOfPart(solid)).toBe(mesh.positions.length / 9);
  });

  it('of a scan is what the scan says it has', () => {
    const scan = { id: 'rock', triangleCount: 1234 } as Scan;
    expect(trianglesOfPart(part.parse({ kind: 'scan', scanId: 'rock' }), [scan])).toBe(1234);
  });

  it('does not grow without end with roughness: 20,000 at most', () => {
    const rough = { heightMetres: 0.01, sizeMetres: 0.01 };
    const most = trianglesOfPart(part.parse({ kind: 'sphere', radiusMetres: 2000, rough }));
    expect(most).toBeLessThanOrEqual(20_000);
    expect(most).toBeGreaterThan(15_000);
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
