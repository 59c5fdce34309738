import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { setupSchemaText } from '../../../app/cli/setup-schema-text.ts';

import { setupVersion } from '../../../core/setup/schema/setup.ts';

const assets = resolve(import.meta.dirname, '../../../assets');
const read = (name: string) => readFileSync(resolve(assets, name), 'utf8');
const filed = JSON.parse(read('setup.schema.json')) as Node;

interface Node {
  readonly description?: string;
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node | boolean;
  readonly prefixItems?: readonly Node[];
  readonly anyOf?: readonly Node[];
  readonly oneOf?: readonly Node[];
}

interface Leaf {
  readonly path: string;
  readonly node: Node;
  /** Its own description and that of the field whose choices or entries it belongs to. */
  readonly description: string;
}

/** Every field that holds no further fields. Choices and entries may lean on the description of the field they are of. */
const leavesOf = (node: Node, path = '', above = ''): Leaf[] => {
  const description = `${above} ${node.description ?? ''}`.trim();
  const fields = Object.entries(node.properties ?? {}).flatMap(([key, child]) => leavesOf(child, `${path}.${key}`));
  const choices = [...(node.anyOf ?? []), ...(node.oneOf ?? []), ...(node.prefixItems ?? [])];
  const entries = typeof node.items === 'object' ? [node.items] : [];
  const inner = [...choices, ...entries].flatMap((child, i) => leavesOf(child, `${path}[${i}]`, description));
  const all = [...fields, ...inner];
  return all.length > 0 || node.type === 'object' ? all : [{ path, node, description }];
};

const leaves = leavesOf(filed);

/** End of a field's name, and the unit that its description must carry. */
const units: readonly (readonly [RegExp, string])[] = [
  [/Metres$/, 'metres'],
  [/[dD]egrees$/, 'degrees'],
  [/Mm$/, 'mm'],
  [/[kK]elvin$/, 'kelvin'],
  [/[lL]ux$/, 'lux'],
  [/lumens$/, 'lumens'],
  [/candela$/, 'candela'],
  [/Km$/, 'km'],
  [/Percent$/, '%'],
  [/CdM2$/, 'cd/m2'],
  [/(?:[sS]econds|\.on|\.off|\.time)$/, 'seconds'],
  [/Mired$/, 'mired'],
];

const undescribed = (list: readonly Leaf[]) =>
  list.filter(({ description }) => description.length < 3).map(({ path }) => path);
const withoutUnit = (list: readonly Leaf[]) =>
  list.flatMap(({ path, description }) => {
    const unit = units.find(([end]) => end.test(path.replace(/(?:\[\d+\])+$/, '')))?.[1];
    return unit && !description.includes(unit) ? [`${path}: ${unit}`] : [];
  });

describe('assets/setup.schema.json', () => {
  it('is what the schema gives now; `npm run schema` writes it', () => {
    expect(read('setup.schema.json') === setupSchemaText()).toBe(true);
  });

  it('has a title, no $id, two-space indentation and one line end at its end', () => {
    expect(filed).toMatchObject({ title: 'Lampfall setup', $schema: 'https://json-schema.org/draft/2020-12/schema' });
    expect(filed).not.toHaveProperty('$id');
    expect(read('setup.schema.json')).toBe(`${JSON.stringify(filed, null, 2)}\n`);
  });

  it('describes every leaf field, more than 150 of them', () => {
    expect(leaves.length).toBeGreaterThan(150);
    expect(undescribed(leaves)).toEqual([]);
  });

  it('names the unit in the description of every field whose name ends in one', () => {
    expect(leaves.filter(({ path }) => units.some(([end]) => end.test(path))).length).toBeGreaterThan(60);
    expect(withoutUnit(leaves)).toEqual([]);
  });

  it('the two checks above find a field without description and one without unit', () => {
    const bad = leavesOf({
      type: 'object',
      properties: { widthMm: { type: 'number' }, spanMetres: { type: 'number', description: 'span' } },
    });
    expect(undescribed(bad)).toEqual(['.widthMm']);
    expect(withoutUnit(bad)).toEqual(['.widthMm: mm', '.spanMetres: metres']);
  });
});

describe('samples against assets/setup.schema.json, read back by zod as plain JSON Schema', () => {
  const validator = z.fromJSONSchema(filed as Parameters<typeof z.fromJSONSchema>[0]);
  it.each(['three-stones', 'drystone-wall'])('%s validates', (name) => {
    const result = validator.safeParse(JSON.parse(read(`setups/${name}.json`)));
    expect(result.error?.issues ?? []).toEqual([]);
  });

  it.each([
    ['focal length as text', { camera: { position: [0, 0, 1], aim: [0, 5, 1], focalLengthMm: '24' } }],
    ['a misspelt field', { notes: '' }],
    ['a lamp of unknown kind', { lamps: [{ kind: 'candle', id: 'a', name: 'a' }] }],
    ['no schemes', { schemes: [] }],
    ['a version to come', { version: setupVersion + 1 }],
  ])('refuses %s', (_, change) => {
    const sample = JSON.parse(read('setups/three-stones.json')) as object;
    expect(validator.safeParse({ ...sample, ...change }).success).toBe(false);
  });
});
