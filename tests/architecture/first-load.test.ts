import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { importsOf, sourceFiles } from './read-imports.ts';

const files = sourceFiles(resolve(import.meta.dirname, '../..'), ['core', 'app']);

/** Without what a build leaves out, and without what is loaded when it is asked for. */
const atFirst = (text: string): string =>
  text.replace(/^(?:import|export) type [^;]*;$/gm, '').replace(/\bimport\([^)]*\)/g, '');

const importsAtFirst = new Map(
  files.map(({ file, text }) => [file, importsOf(file, atFirst(text)).filter(({ kind }) => kind !== 'worker')]),
);

/** Why each file is loaded with the page: the file that imports it. */
const firstLoad = (): Map<string, string> => {
  const reasons = new Map([['app/web/main.tsx', '']]);
  for (const [file] of reasons)
    for (const { kind, target } of importsAtFirst.get(file) ?? [])
      if (kind === 'file' && importsAtFirst.has(target) && !reasons.has(target)) reasons.set(target, file);
  return reasons;
};

/** Libraries of single rooms, and what only reading a setup needs. */
const latePackages =
  /^(?:zod|@react-three\/.*|pdfkit|fontkit|exifr|d3-contour|meshoptimizer|geomagnetism|@photostructure\/tz-lookup)$/;

describe('what is loaded with the page', () => {
  const loaded = firstLoad();

  it('is found: the page, the room on the first screen, the darkroom, and over 200 files', () => {
    expect([...loaded.keys()]).toEqual(
      expect.arrayContaining(['app/web/App.tsx', 'app/web/viewfinder/Viewfinder.tsx', 'app/web/render/tracer.ts']),
    );
    expect(loaded.size).toBeGreaterThan(200);
  });

  it('holds no file that some import() loads later', () => {
    const late = files.flatMap(({ file, text }) =>
      [...text.matchAll(/\bimport\(\s*'([^']+)'\s*\)/g)].flatMap(([, path]) => importsOf(file, `import '${path}';`)),
    );
    const names = [...new Set(late.map(({ target }) => target))].filter((name) => importsAtFirst.has(name));
    expect(names).toContain('app/web/compare/CompareRoom.tsx');
    const both = names.filter((name) => loaded.has(name));
    expect(both.map((name) => `${loaded.get(name)} imports ${name}`)).toEqual([]);
  });

  it('holds no library that one room alone needs', () => {
    const found = [...loaded.keys()].flatMap((file) =>
      (importsAtFirst.get(file) ?? []).filter(({ kind, target }) => kind === 'package' && latePackages.test(target)),
    );
    expect(found.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
  });
});
