import { readFileSync } from 'node:fs';
import { compareSheet } from '../../../app/web/sheets/compare-sheet.ts';
import type { Sheet } from '../../../app/web/sheets/sheet.ts';
import type { MeasureText, SheetBox } from '../../../app/web/sheets/sheet-parts.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';

export const setup = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));

/** Every letter half as wide as it is high. */
export const measure: MeasureText = (text, { sizePixels }) => text.length * sizePixels * 0.5;

export const words = {
  passes: ['Key · 3:00 · 6.0 m · knee'],
  keyName: null,
  rows: [
    { label: 'Target', value: '−1.4 stops', sense: 'dim, as at night' },
    { label: 'Outline', value: '', sense: '' },
  ],
};
export const sheetOf = (count: number, isUnlit = false): Sheet => {
  const schemes = Array.from({ length: count }, (_, i) => ({
    ...(setup.schemes[0] as (typeof setup.schemes)[number]),
    id: `scheme-${i}`,
    name: `Scheme ${i}`,
  }));
  const lit = schemes.map((scheme) => ({ scheme, isUnlit: false, words, cautions: ['flat'] }));
  const [first] = lit;
  const unlit = isUnlit && first ? [{ ...first, isUnlit: true, words: null, cautions: [] }] : [];
  return compareSheet({
    setup,
    tiles: [...lit, ...unlit],
    frame: null,
    marks: { full: false, levels: false },
    samples: 4,
  });
};
export const overlap = (a: SheetBox, b: SheetBox) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
