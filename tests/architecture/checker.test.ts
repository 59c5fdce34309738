import { describe, expect, it } from 'vitest';
import { findCycle } from './cycles.ts';
import { type Import, importsOf } from './read-imports.ts';
import { brokenRule } from './rules.ts';

const only = (file: string, line: string): Import => {
  const found = importsOf(file, line);
  if (found.length !== 1) throw new Error(`expected one import in ${line}, found ${found.length}`);
  return found[0] as Import;
};
const rule = (file: string, specifier: string) => brokenRule(only(file, `import { x } from '${specifier}';`));

/** [importing file, what it imports, words of the rule that it breaks]. */
const wrong: readonly (readonly [string, string, string])[] = [
  ['core/world/a.ts', '../../app/web/state/store.ts', 'core imports core only'],
  ['core/world/a.ts', '../../tests/core/b.ts', 'core imports core only'],
  ['core/world/a.ts', '../../assets/b.json', 'core imports core only'],
  ...['react', 'three', 'react-dom', 'react-dom/client', '@react-three/fiber', 'zustand', 'fast-png'].map(
    (name) => ['core/trace/a.ts', name, 'core may import zod'] as const,
  ),
  ['core/setup/a.ts', 'node:fs', 'no node modules'],
  ['core/units/a.ts', '../colour/b.ts', 'core/units may not import core/colour'],
  ['core/colour/a.ts', '../geometry/b.ts', 'core/colour may not import core/geometry'],
  ['core/geometry/parts/a.ts', '../../colour/b.ts', 'core/geometry may not import core/colour'],
  ['core/photometry/a.ts', '../camera/b.ts', 'core/photometry may not import core/camera'],
  ['core/camera/a.ts', '../photometry/b.ts', 'core/camera may not import core/photometry'],
  ['core/sky/a.ts', '../camera/b.ts', 'core/sky may not import core/camera'],
  ['core/setup/a.ts', '../world/b.ts', 'core/setup may not import core/world'],
  ['core/setup/schema/a.ts', '../../photometry/b.ts', 'core/setup may not import core/photometry'],
  ['core/world/a.ts', '../trace/b.ts', 'core/world may not import core/trace'],
  ['core/walk/a.ts', '../world/b.ts', 'core/walk may not import core/world'],
  ['core/walk/a.ts', '../camera/b.ts', 'core/walk may not import core/camera'],
  ['core/trace/a.ts', '../readings/b.ts', 'core/trace may not import core/readings'],
  ['core/readings/a.ts', '../cautions/b.ts', 'core/readings may not import core/cautions'],
  ['core/cautions/a.ts', '../card/b.ts', 'core/cautions may not import core/card'],
  ['core/misc/a.ts', '../units/b.ts', 'core/misc is not a folder'],
  ['core/a.ts', './units/b.ts', 'is not a folder that the rules know'],
  ['app/web/render/a.ts', 'react', 'app/web/render may not import react'],
  ['app/web/render/a.ts', 'zustand', 'app/web/render may not import zustand'],
  ['app/web/render/a.ts', '@react-three/fiber', 'app/web/render may not import @react-three/fiber'],
  ['app/web/render/shaders/a.ts', '../../state/b.ts', 'app/web/render may not import app/web/state'],
  ['app/web/state/a.ts', '../render/b.ts', 'app/web/state may not import app/web/render'],
  ['app/web/state/a.ts', '../ui/b.tsx', 'app/web/state may not import app/web/ui'],
  ['app/web/state/a.ts', 'react', 'app/web/state may not import react'],
  ['app/web/ui/a.tsx', '../state/b.ts', 'app/web/ui may not import app/web/state'],
  ['app/web/workers/a.ts', '../state/b.ts', 'app/web/workers may not import app/web/state'],
  ['app/web/viewfinder/a.tsx', '../groundplan/b.tsx', 'app/web/viewfinder may not import app/web/groundplan'],
  ['app/web/render/a.ts', '../../../assets/b.json', 'app/web/render may not import assets/b.json'],
  ['app/web/state/a.ts', '../../../assets/b.ts', 'app/web/state may not import assets/b.ts'],
  ['app/web/card/a.tsx', '../main.tsx', 'app/web/card may not import app/web/main.tsx'],
  ['app/web/compare/a.tsx', '../../cli/b.ts', 'app/web may not import app/cli'],
  ['app/web/compare/a.tsx', 'node:path', 'the page has no node modules'],
  ['app/cli/a.ts', '../web/state/b.ts', 'app/cli may not import app/web'],
];

const right: readonly (readonly [string, string])[] = [
  ['core/setup/a.ts', 'zod'],
  ['core/setup/schema/a.ts', '../../units/b.ts'],
  ['core/world/a.ts', '../setup/schema/b.ts'],
  ['core/card/a.ts', '../cautions/b.ts'],
  ['core/readings/a.ts', '../trace/b.ts'],
  ['core/readings/a.ts', '../walk/b.ts'],
  ['core/walk/a.ts', '../geometry/b.ts'],
  ['app/web/render/shaders/a.ts', '../../../../core/world/b.ts'],
  ['app/web/render/a.ts', './shaders/b.ts'],
  ['app/web/render/a.ts', 'three'],
  ['app/web/state/a.ts', 'zustand/vanilla'],
  ['app/web/state/a.ts', '../workers/b.ts'],
  ['app/web/ui/a.tsx', 'react'],
  ['app/web/inspector/a.tsx', '../ui/b.tsx'],
  ['app/web/inspector/a.tsx', '../state/b.ts'],
  ['app/web/inspector/a.tsx', './b.css'],
  ['app/web/library/a.tsx', '../../../assets/setups/b.json'],
  ['app/web/state/a.ts', '../../../assets/setups/b.json'],
  ['app/web/walkaround/a.tsx', '@react-three/drei'],
  ['app/web/main.tsx', './viewfinder/b.tsx'],
  ['app/cli/a.ts', 'node:fs'],
  ['app/cli/a.ts', 'fast-png'],
];

describe('brokenRule', () => {
  it.each(wrong)('finds fault where %s imports %s', (file, specifier, words) => {
    expect(rule(file, specifier)).toContain(words);
  });

  it.each(right)('finds no fault where %s imports %s', (file, specifier) => {
    expect(rule(file, specifier)).toBeNull();
  });

  it.each([
    "import type { X } from '../trace/b.ts';",
    "import { type X } from '../trace/b.ts';",
    "import {\n  a,\n  b,\n} from '../trace/b.ts';",
    "import '../trace/b.ts';",
    "import * as b from '../trace/b.ts';",
    "export { b } from '../trace/b.ts';",
    "export * from '../trace/b.ts';",
    "export type { B } from '../trace/b.ts';",
    "const b = await import('../trace/b.ts');",
    "type B = import('../trace/b.ts').B;",
    "const w = new Worker(new URL('../trace/b.ts', import.meta.url));",
    "import { b } from '../trace/b.ts?worker';",
  ])('counts every way to import the same: %s', (line) => {
    expect(brokenRule(only('core/world/a.ts', line))).toBe('core/world may not import core/trace');
  });

  it.each([
    "import b from './b.ts';",
    "import type B from './b.ts';",
    "import b, { c } from './b.ts';",
    "import { default as b } from './b.ts';",
    "export { default } from './b.ts';",
  ])('finds a default export taken from core: %s', (line) => {
    expect(brokenRule(only('core/world/a.ts', line))).toBe('core has no default exports');
  });

  it('finds a dynamic import that hides its file', () => {
    expect(brokenRule(only('app/cli/a.ts', 'await import(name);'))).toContain('in quotes');
  });
});

describe('importsOf', () => {
  it('leaves comments, plain strings and exports without a source alone', () => {
    const text =
      "// import a from './a.ts'\n/** import('./b.ts') */\n * from './c.ts'\nexport const d = './d.ts';\nexport interface E {\n  readonly f: 'g';\n}\nexport type H =\n  | 'i';\nconst e = \"x from 'y'\";\n";
    expect(importsOf('core/world/a.ts', text)).toEqual([]);
  });
});

describe('findCycle', () => {
  const imported = (file: string, target: string, kind: Import['kind'] = 'file'): Import => ({
    file,
    target,
    kind,
    takesDefault: false,
  });
  it('finds a ring of three behind a straight start', () => {
    expect(findCycle([imported('s', 'a'), imported('a', 'b'), imported('b', 'c'), imported('c', 'a')])).toEqual([
      'a',
      'b',
      'c',
      'a',
    ]);
  });
  it('finds a file that imports itself', () => {
    expect(findCycle([imported('a', 'a')])).toEqual(['a', 'a']);
  });
  it('finds none where two ways lead to one file, nor through a worker started by its address', () => {
    expect(findCycle([imported('a', 'b'), imported('a', 'c'), imported('b', 'd'), imported('c', 'd')])).toBeNull();
    expect(findCycle([imported('a', 'b', 'worker'), imported('b', 'a')])).toBeNull();
  });
});
