import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { licencesText, packageFolder } from '../../../app/build/licences-plugin.ts';
import { nestedWorkOf } from '../../../app/build/nested-works.ts';

const folder = mkdtempSync(join(tmpdir(), 'lampfall-licences-'));
afterAll(() => rmSync(folder, { recursive: true }));

const made = (name: string, described: object, files: Record<string, string> = {}): string => {
  const path = join(folder, name);
  mkdirSync(path);
  writeFileSync(join(path, 'package.json'), JSON.stringify({ name, version: '1.2.3', ...described }));
  for (const [file, text] of Object.entries(files)) writeFileSync(join(path, file), text);
  return path;
};

describe('packageFolder', () => {
  it.each([
    ['/a/node_modules/three/build/three.core.js', '/a/node_modules/three'],
    ['/a/node_modules/@scope/font/index.css?inline', '/a/node_modules/@scope/font'],
    ['/a/node_modules/x/node_modules/y/y.js', '/a/node_modules/x/node_modules/y'],
    ['\0/a/node_modules/x/x.js?commonjs-module', '/a/node_modules/x'],
    ['/a/app/web/main.tsx', null],
    ['virtual:stars', null],
  ])('%s: %s', (id, expected) => {
    expect(packageFolder(id)).toBe(expected);
  });
});

describe('licencesText', () => {
  it('gives each package once, by name, with its own text and notice', () => {
    const b = made('b', { license: 'Apache-2.0' }, { 'LICENSE.md': 'terms of b', NOTICE: 'notice of b' });
    const a = made('a', { license: 'ISC' }, { LICENCE: 'terms of a' });
    const text = licencesText([b, a, b]);
    expect(text.match(/^\w 1\.2\.3 · /gm)).toEqual(['a 1.2.3 · ', 'b 1.2.3 · ']);
    for (const each of ['terms of a', 'terms of b', 'notice of b']) expect(text).toContain(each);
  });

  it('gives a package under MIT that ships no text the text, with whoever made it', () => {
    const text = licencesText([made('c', { license: 'MIT', author: { name: 'Somebody' } })]);
    expect(text).toMatch(/Copyright \(c\) Somebody\n.*Permission is hereby granted/s);
    expect(text).not.toContain('Lampfall');
  });

  it('refuses a package of unknown terms, so that none is built in unseen', () => {
    const path = made('d', { license: 'CUSTOM' });
    expect(() => licencesText([path])).toThrow('d ships no licence text, and “CUSTOM” is not known here');
  });
});

describe('nestedWorkOf', () => {
  const libs = '/a/node_modules/three/examples/jsm/libs';

  it('knows the decoder that the reading of scans takes in, and its terms stand in the text beside the package’s own', () => {
    const taken = readFileSync(join(import.meta.dirname, '../../../app/web/scans/worker-tools.ts'), 'utf8');
    const ids = [...taken.matchAll(/import\('(three\/examples\/jsm\/libs\/[^']+)'\)/g)].map(([, id]) => id as string);
    expect(ids).toHaveLength(2);
    const works = ids.map((id) => nestedWorkOf(`/a/node_modules/${id}`));
    expect(works.map((work) => work?.license)).toEqual(['Apache-2.0', 'Apache-2.0']);
    const text = licencesText(
      [made('three', { license: 'MIT' })],
      works.flatMap((work) => work ?? []),
    );
    expect(text.match(/^Draco .* · Apache-2\.0$/gm)).toHaveLength(1);
    expect(text).toMatch(/Copyright The Draco Authors\s+Apache License\s+Version 2\.0, January 2004/);
    expect(text).toContain('END OF TERMS AND CONDITIONS');
    expect(text).toContain('three 1.2.3 · MIT');
  });

  it('is null for what is the package’s own work', () => {
    expect(nestedWorkOf('/a/node_modules/three/build/three.core.js')).toBeNull();
    expect(nestedWorkOf('/a/app/web/main.tsx')).toBeNull();
  });

  it('refuses a work that nobody listed, so that none is built in unseen', () => {
    for (const file of ['basis/basis_transcoder.js', 'meshopt_decoder.module.js'])
      expect(() => nestedWorkOf(`${libs}/${file}`)).toThrow(`libs/${file} is a work of its own`);
  });
});
