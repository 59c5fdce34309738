import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findCycle } from './cycles.ts';
import { importsOf, type SourceFile, sourceFiles } from './read-imports.ts';
import { brokenRule } from './rules.ts';

const root = resolve(import.meta.dirname, '../..');
const files = sourceFiles(root, ['core', 'app']);
const imports = files.flatMap(({ file, text }) => importsOf(file, text));
const lines = ({ text }: SourceFile) => text.split('\n').length - 1;
const longer = (list: readonly SourceFile[], limit: number) =>
  list.filter((file) => lines(file) > limit).map((file) => `${file.file}: ${lines(file)} lines`);

describe('imports of core and app', () => {
  it('are found: at least one for every two files, and the ones of core/world/world.ts that are known to be there', () => {
    expect(files.length).toBeGreaterThan(50);
    expect(imports.length).toBeGreaterThan(files.length / 2);
    const ofWorld = imports.filter(({ file }) => file === 'core/world/world.ts').map(({ target }) => target);
    expect(ofWorld).toContain('core/world/stage.ts');
    expect(ofWorld).toContain('core/camera/camera-view.ts');
  });

  it('reads every from-clause: as many as lines that end in one', () => {
    const endings = files.flatMap(({ text }) => text.match(/^(?!\s*(?:\*|\/\/)).*\bfrom '[^']+';$/gm) ?? []);
    const counted = imports.filter(({ kind }) => kind !== 'worker' && kind !== 'unreadable');
    expect(counted.length).toBeGreaterThanOrEqual(endings.length);
  });

  it('go the allowed way only', () => {
    const broken = imports.flatMap((imported) => {
      const rule = brokenRule(imported);
      return rule ? [`${imported.file} imports ${imported.target}: ${rule}`] : [];
    });
    expect(broken).toEqual([]);
  });

  it('make no ring of files', () => {
    expect(findCycle(imports)).toBeNull();
  });
});

describe('source files', () => {
  it('have no default export in core', () => {
    const found = files.filter(({ file, text }) => file.startsWith('core/') && /^export default\b/m.test(text));
    expect(found.map(({ file }) => file)).toEqual([]);
  });

  it('have at most 400 lines; those over 250 are listed for a second look', () => {
    const secondLook = longer([...files, ...sourceFiles(root, ['tests'])], 250);
    if (secondLook.length > 0) console.info(`over 250 lines:\n${secondLook.join('\n')}`);
    expect(longer(files, 400)).toEqual([]);
  });
});
