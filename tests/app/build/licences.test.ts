import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { licencesText, packageFolder } from '../../../app/build/licences-plugin.ts';
import { nestedWork } from '../../../app/build/nested-works.ts';

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

describe('works that packages carry under terms of their own', () => {
  const draco = 'three/examples/jsm/libs/draco';

  it.each([
    [`/a/node_modules/${draco}/gltf/draco_wasm_wrapper.js`, draco],
    [`/a/node_modules/${draco}/gltf/draco_decoder.wasm?url&inline`, draco],
    ['/a/node_modules/three/build/three.core.js', null],
    ['/a/app/web/scans/worker-tools.ts', null],
  ])('%s: %s', (id, place) => expect(nestedWork(id)).toBe(place));

  it('refuses one whose terms are not known', () => {
    expect(() => nestedWork('/a/node_modules/three/examples/jsm/libs/basis/basis_transcoder.js')).toThrow(
      'three/examples/jsm/libs/basis has terms of its own, which are not known here',
    );
  });

  it('gives the decoder of scans its own licence, as the file beside it says', () => {
    expect(readFileSync(`node_modules/${draco}/README.md`, 'utf8')).toMatch(/## License\s+\[Apache License 2\.0\]/);
    const text = licencesText([], [draco, draco]);
    expect(text.match(/^Draco decoder.* · Apache-2\.0 · /gm)).toHaveLength(1);
    expect(text).toMatch(/Apache License\s+Version 2\.0, January 2004.*END OF TERMS AND CONDITIONS/s);
  });

  it('names every such work that the sources take in', () => {
    const sources = readFileSync('app/web/scans/worker-tools.ts', 'utf8');
    const taken = [...sources.matchAll(/import\('([^']+)'\)/g)].map(([, id]) => `/node_modules/${id}`);
    expect(taken.map(nestedWork)).toEqual([draco, draco]);
  });
});
