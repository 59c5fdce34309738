import { describe, expect, it } from 'vitest';
import { levelBands } from '../../../app/web/render/stops-bands.ts';
import { sheetLayout } from '../../../app/web/sheets/sheet-layout.ts';
import { measure, overlap, sheetOf } from './sheet-samples.ts';

describe('the key of a sheet of levels', () => {
  const plain = sheetOf(6);
  const keyed = { ...plain, hasLevelKey: true };
  it.each([640, 1333, 4096])(
    '%i px wide: a patch for each band, inside the sheet, above the pictures, none on another',
    (width) => {
      const { swatches, cells, texts, height } = sheetLayout(keyed, width, measure);
      expect(swatches.map(({ colour }) => colour)).toEqual(levelBands.colours);
      const [first] = cells;
      for (const swatch of swatches) {
        expect(swatch.x + swatch.width).toBeLessThan(width);
        expect(swatch.y + swatch.height).toBeLessThan(first?.picture.y ?? 0);
      }
      swatches.forEach((a, i) => {
        for (const b of swatches.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      });
      // each number stands beside its patch and ends before the next one
      swatches.forEach((swatch, i) => {
        const next = swatches[i + 1];
        const text = texts.find(
          ({ x, y }) =>
            x > swatch.x + swatch.width &&
            x < swatch.x + 2 * swatch.width &&
            y > swatch.y &&
            y <= swatch.y + swatch.height,
        );
        expect(text).toBeDefined();
        if (text && next?.y === swatch.y) expect(text.x + measure(text.text, text)).toBeLessThan(next.x);
      });
      expect(height).toBeGreaterThan(sheetLayout(plain, width, measure).height);
    },
  );

  it('is there when levels are shown, and else not', () => {
    expect(plain.hasLevelKey).toBe(false);
    expect(sheetLayout(plain, 900, measure).swatches).toEqual([]);
  });
});
