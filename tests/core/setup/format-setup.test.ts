import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, goodSetup } from './good-setup.ts';

const samples = ['three-stones', 'drystone-wall'].map(
  (name) => [name, readFileSync(resolve(import.meta.dirname, `../../../assets/setups/${name}.json`), 'utf8')] as const,
);

describe('formatSetup', () => {
  it.each([...samples, ['good setup', JSON.stringify(goodSetup())] as const])(
    '%s: written and read again it is the same, and written twice the same text',
    (_, text) => {
      const setup = parseSetup(text);
      const written = formatSetup(setup);
      expect(parseSetup(written)).toEqual(setup);
      expect(formatSetup(parseSetup(written))).toBe(written);
    },
  );

  it.each(samples)('%s: the same JSON as plain JSON.stringify', (_, text) => {
    const setup = parseSetup(text);
    expect(JSON.parse(formatSetup(setup))).toEqual(JSON.parse(JSON.stringify(setup)));
  });

  it('puts two to four numbers on one line, other lists on several, and ends with one line end', () => {
    const text = formatSetup(parseSetup(JSON.stringify(goodSetup())));
    expect(text).toContain('"position": [5, 6, 1],\n');
    expect(text).toContain('"heightMetres": [0.02, 0.1],\n');
    expect(text).toMatch(/"lamps": \[\n {4}\{\n/);
    expect(text).toMatch(/[^\n]\n$/);
    expect(text).not.toMatch(/\[\n\s+-?\d/);
  });

  it('keeps very small, very large and negative numbers on the line', () => {
    const text = changed((setup) => {
      setup.camera.position = [-1e-7, 1.25e-9, -12.5];
    });
    expect(formatSetup(parseSetup(text))).toContain('"position": [-1e-7, 1.25e-9, -12.5],');
  });

  it('leaves texts that look like lists alone', () => {
    const note = '[\n  1,\n  2\n] and "[3]" \\[\\n 4\\n]';
    const setup = parseSetup(
      changed((s) => {
        s.note = note;
      }),
    );
    expect(parseSetup(formatSetup(setup)).note).toBe(note);
  });
});
