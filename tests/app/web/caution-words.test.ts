import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cautionWords } from '../../../app/web/ui/CautionMark.tsx';

const folder = 'core/cautions';
const codes = new Set(
  readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .flatMap(({ name }) =>
      [...readFileSync(`${folder}/${name}`, 'utf8').matchAll(/\bcode: '([a-z-]+)'/g)].map(([, code]) => code as string),
    ),
);

describe('words for cautions', () => {
  it('every code of core has one, for where there is room for a word only', () => {
    expect(codes.size).toBeGreaterThan(30);
    expect([...codes].filter((code) => !cautionWords[code])).toEqual([]);
  });
});
