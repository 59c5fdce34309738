import { describe, expect, it } from 'vitest';
import { compareSheet } from '../../../app/web/sheets/compare-sheet.ts';
import { fitSheet } from '../../../app/web/sheets/fit-sheet.ts';
import { settingWords } from '../../../app/web/sheets/setting-words.ts';
import { cellsOf } from '../../../app/web/sheets/sheet.ts';
import { sheetLayout } from '../../../app/web/sheets/sheet-layout.ts';
import type { SheetBox } from '../../../app/web/sheets/sheet-parts.ts';
import { sweepSheet } from '../../../app/web/sheets/sweep-sheet.ts';
import { wrapWords } from '../../../app/web/sheets/wrap-words.ts';
import { measure, overlap, setup, sheetOf, words } from './sheet-samples.ts';

const cases = [640, 900, 1333, 1920, 4096].flatMap((width) =>
  [1, 2, 3, 4, 6, 7].map((count) => [width, count] as const),
);

describe('sheetLayout', () => {
  it.each(cases)(
    '%i px wide with %i tiles: all boxes are whole pixels inside the sheet and none lie on another',
    (width, count) => {
      const layout = sheetLayout(sheetOf(count), width, measure);
      expect(layout.width).toBe(width);
      const boxes = layout.cells.flatMap(({ picture, plan }) => (plan ? [picture, plan] : [picture]));
      expect(layout.cells).toHaveLength(count);
      for (const { x, y, width: w, height: h } of boxes) {
        for (const v of [x, y, w, h]) expect(Number.isInteger(v)).toBe(true);
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x + w).toBeLessThanOrEqual(width);
        expect(y + h).toBeLessThanOrEqual(layout.height);
      }
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(false);
      });
    },
  );

  it.each(cases)(
    '%i px wide with %i tiles: no words reach out of the sheet or into a picture, none under 11 px',
    (width, count) => {
      const layout = sheetLayout(sheetOf(count, true), width, measure);
      for (const text of layout.texts) {
        const box: SheetBox = {
          x: text.x,
          y: text.y - text.sizePixels * 0.7,
          width: measure(text.text, text),
          height: text.sizePixels * 0.7,
        };
        expect(text.sizePixels).toBeGreaterThanOrEqual(11);
        expect(box.x + box.width).toBeLessThanOrEqual(width);
        expect(text.y).toBeLessThanOrEqual(layout.height);
        for (const { picture, plan } of layout.cells) {
          expect(overlap(box, picture), `${text.text} over a picture`).toBe(false);
          if (plan) expect(overlap(box, plan), `${text.text} over a plan`).toBe(false);
        }
      }
    },
  );

  it('pictures have the sensor’s aspect (abs 1 px) and all the same size', () => {
    for (const width of [640, 1920, 4096]) {
      const { cells } = sheetLayout(sheetOf(6), width, measure);
      const [first] = cells;
      for (const { picture } of cells) {
        expect(Math.abs(picture.height - picture.width / 1.5)).toBeLessThanOrEqual(1);
        expect(picture.width).toBe(first?.picture.width);
      }
    }
  });

  it('keeps the order of the schemes, left to right and then down', () => {
    const { cells } = sheetLayout(sheetOf(5), 1920, measure);
    const places = cells.map(({ picture }) => picture.y * 1e5 + picture.x);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('puts fewer cells side by side where the smallest letters would not fit', () => {
    const sheet = { ...sheetOf(6), columns: 6 };
    expect(sheetLayout(sheet, 1920, measure).columns).toBe(6);
    expect(sheetLayout(sheet, 640, measure).columns).toBe(4);
  });

  it('is the same sheet in finer pixels when it is twice as wide (rel 2 %)', () => {
    const [one, two] = [2000, 4000].map((width) => sheetLayout(sheetOf(6, true), width, measure));
    expect((two?.height ?? 0) / (one?.height ?? 1)).toBeGreaterThan(1.96);
    expect((two?.height ?? 0) / (one?.height ?? 1)).toBeLessThan(2.04);
  });
});

describe('wrapWords', () => {
  const widthOf = (text: string) => text.length;
  it('breaks at spaces only, keeps every word in order, and fills lines as far as they go', () => {
    expect(wrapWords('one two three four', 9, widthOf)).toEqual(['one two', 'three', 'four']);
    expect(wrapWords('one two three four', 100, widthOf)).toEqual(['one two three four']);
    expect(wrapWords('a verylongword b', 4, widthOf)).toEqual(['a', 'verylongword', 'b']);
  });
});

describe('compareSheet', () => {
  it('names the unlit tile, gives it no plan and no numbers, and every picture a screen of its own', () => {
    const cells = cellsOf(sheetOf(3, true));
    expect(cells.map(({ name }) => name)).toEqual(['Scheme 0', 'Scheme 1', 'Scheme 2', 'Unlit']);
    expect(cells.at(-1)?.plan).toBeNull();
    expect(cells.at(-1)?.lines).toEqual(['Without lamps']);
    expect(new Set(cells.map(({ picture }) => picture.screen)).size).toBe(4);
  });

  it('says the rows that have something to say', () => {
    expect(cellsOf(sheetOf(1))[0]?.lines).toEqual([
      'Key · 3:00 · 6.0 m · knee',
      'Target: −1.4 stops, dim, as at night',
      'Cautions: flat',
    ]);
  });

  it('says camera and exposure once, and again under a scheme that has others', () => {
    const [first] = setup.schemes;
    if (!first) throw new Error('no scheme');
    const other = {
      ...first,
      id: 'other',
      frames: first.frames.map((frame) => ({ ...frame, iso: 800, aperture: 5.6 })),
    };
    const tiles = [first, other].map((scheme) => ({ scheme, isUnlit: false, words, cautions: [] }));
    const sheet = compareSheet({ setup, tiles, frame: null, marks: { full: false, levels: false }, samples: 4 });
    expect(sheet.subtitle).toBe(settingWords(setup, first, null));
    const [same, changed] = cellsOf(sheet);
    expect(same?.lines[0]).toBe('Key · 3:00 · 6.0 m · knee');
    expect(changed?.lines[0]).toContain('f/5.6');
    expect(changed?.lines[0]).toContain('ISO 800');
  });
});

describe('sweepSheet', () => {
  const [scheme] = setup.schemes;
  if (!scheme) throw new Error('no scheme');
  const cellsNamed = (row: string, count: number) =>
    Array.from({ length: count }, (_, i) => ({ screen: `${row}/${i}`, name: `${i}:00`, lines: [`${i}°`] }));
  const described = {
    title: 'Key · round the clock',
    groups: [
      { name: 'knee · 0.5 m', cells: cellsNamed('knee', 12) },
      { name: 'hip · 1 m', cells: cellsNamed('hip', 12) },
    ],
  };
  const pictureOf = (screen: string) => ({
    setup,
    scheme,
    isUnlit: false,
    screen,
    look: 'picture' as const,
    against: null,
    marksFull: false,
  });

  it('keeps rows and order, six cells side by side, all plans to one scale', () => {
    const sheet = sweepSheet({ described, pictureOf, frame: null, samples: 16 });
    expect(sheet?.columns).toBe(6);
    expect(sheet?.fileName).toBe('three-standing-stones-sweep');
    expect(sheet?.groups.map(({ name }) => name)).toEqual(['knee · 0.5 m', 'hip · 1 m']);
    const cells = sheet ? cellsOf(sheet) : [];
    expect(cells.map(({ picture }) => picture.screen)).toEqual(
      described.groups.flatMap((group) => group.cells.map(({ screen }) => screen)),
    );
    expect(new Set(cells.map(({ plan }) => plan?.view)).size).toBe(1);
  });

  it('fits at every width that may be chosen', () => {
    const sheet = sweepSheet({ described, pictureOf, frame: null, samples: 16 });
    if (!sheet) throw new Error('nothing in it');
    for (const width of [640, 1920, 4096]) expect(fitSheet(sheet, width, measure)).toHaveProperty('layout');
  });

  it('leaves out cells without a picture, and rows of none; there is none of nothing', () => {
    const only = sweepSheet({
      described,
      pictureOf: (screen) => (screen === 'hip/3' ? pictureOf(screen) : null),
      frame: null,
      samples: 16,
    });
    expect(only && cellsOf(only).map(({ name }) => name)).toEqual(['3:00']);
    expect(only?.groups.map(({ name }) => name)).toEqual(['hip · 1 m']);
    expect(sweepSheet({ described, pictureOf: () => null, frame: null, samples: 16 })).toBeNull();
  });
});
