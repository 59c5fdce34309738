import { describe, expect, it } from 'vitest';
import { fitSheet, sheetLimits } from '../../../app/web/sheets/fit-sheet.ts';
import { cellsOf } from '../../../app/web/sheets/sheet.ts';
import { sheetLayout } from '../../../app/web/sheets/sheet-layout.ts';
import { measure, sheetOf } from './sheet-samples.ts';

describe('fitSheet', () => {
  const many = { ...sheetOf(6), columns: 1 };

  it('gives the layout where it is low enough', () => {
    expect(fitSheet(sheetOf(6), 4096, measure)).toHaveProperty('layout');
  });

  it('refuses a sheet that would be too tall, in words with a width that would do, which then does', () => {
    const refused = fitSheet(many, 4096, measure);
    if (!('refusal' in refused)) throw new Error('fits');
    expect(refused.refusal).toMatch(/^4096 px wide, the sheet would be \d+ px tall; 8192 are possible\./);
    const width = Number(/width of (\d+) px/.exec(refused.refusal)?.[1]);
    expect(width).toBeGreaterThanOrEqual(sheetLimits.narrowest);
    const fitted = fitSheet(many, width, measure);
    if (!('layout' in fitted)) throw new Error('still too tall');
    expect(fitted.layout.height).toBeLessThanOrEqual(sheetLimits.tallest);
    // and it is about the widest: a tenth wider does not fit
    expect(fitSheet(many, Math.round(width * 1.1), measure)).toHaveProperty('refusal');
  });

  it('finds the widest of the widths 16 px apart, as trying them one by one does', () => {
    for (const [count, columns] of [
      [6, 1],
      [9, 2],
      [84, 6],
    ] as const) {
      const cells = Array.from({ length: count }, (_, i) => cellsOf(many)[i % 6]).flatMap((cell) => cell ?? []);
      const sheet = { ...many, columns, groups: [{ name: '', cells }] };
      const refused = fitSheet(sheet, 4096, measure);
      if (!('refusal' in refused)) throw new Error('fits');
      let width = 4096;
      while (sheetLayout(sheet, width, measure).height > sheetLimits.tallest) width -= 16;
      expect(refused.refusal).toContain(`width of ${width} px`);
    }
  });

  it('asks for fewer pictures where no width would do', () => {
    const cells = Array.from({ length: 40 }, () => cellsOf(many)).flat();
    const refused = fitSheet({ ...many, groups: [{ name: '', cells }] }, 640, measure);
    expect(refused).toHaveProperty('refusal', expect.stringMatching(/Show fewer pictures\.$/));
  });
});
