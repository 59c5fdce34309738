import { describe, expect, it } from 'vitest';
import { millimetresPerPoint, paperSizes } from '../../../core/card/sheet/paper.ts';
import { everyShape, type Page, type Shape } from '../../../core/card/sheet/shapes.ts';
import { capMm } from '../../../core/card/sheet/type.ts';
import { cardWith, caution, font, hardCards, pagesOf } from './cards.ts';

type Text = Extract<Shape, { kind: 'text' }>;
const isText = (shape: Shape): shape is Text => shape.kind === 'text';
const textsOf = ({ shapes }: Page): Text[] => everyShape(shapes).filter(isText);
/** Without those of the plan, which may lie on its lines. */
const ownTextsOf = ({ shapes }: Page): Text[] => shapes.filter(isText);

const boxOf = ({ text, style, anchor, x, y }: Text) => {
  const width = font.measure(text, style);
  const left = anchor === 'start' ? x : anchor === 'middle' ? x - width / 2 : x - width;
  return { left, right: left + width, top: y - capMm(style), bottom: y };
};

/** Texts whose capitals or widths meet. */
const overlaps = (texts: readonly Text[]): string[] =>
  texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b) => {
      const [p, q] = [boxOf(a), boxOf(b)];
      const meet = p.left < q.right - 0.05 && q.left < p.right - 0.05 && p.top < q.bottom && q.top < p.bottom;
      return meet ? [`“${a.text}” and “${b.text}”`] : [];
    }),
  );

/** The least white that is left round the page, millimetres: printers reach to about 6 mm of the edge. */
const white = 6.4;

describe.each(hardCards())('the layout of a card: %s', (_, card) => {
  const pages = pagesOf(card);

  it('sets nothing under 11 points', () => {
    for (const page of pages) for (const { style } of textsOf(page)) expect(style.points).toBeGreaterThanOrEqual(11);
  });

  it('keeps all words inside the printable page, and none on another', () => {
    for (const page of pages) {
      for (const text of textsOf(page).map(boxOf)) {
        expect(text.left).toBeGreaterThanOrEqual(white);
        expect(text.right).toBeLessThanOrEqual(page.widthMm - white);
        expect(text.top).toBeGreaterThanOrEqual(white);
        expect(text.bottom).toBeLessThanOrEqual(page.heightMm - white);
      }
      expect(overlaps(ownTextsOf(page))).toEqual([]);
    }
  });

  it('has every row and every frame once over all pages, at most eight places a page, each page of its paper', () => {
    const numbers = pages.flatMap((page) =>
      everyShape(page.shapes).flatMap((shape) =>
        shape.kind === 'circle' && shape.name?.startsWith('number-') ? [shape.name] : [],
      ),
    );
    // once on the plan, once before its row
    for (const { number } of card.rows) expect(numbers.filter((name) => name === `number-${number}`)).toHaveLength(2);
    for (const page of pages) {
      expect(page).toMatchObject(paperSizes[card.paper]);
      const rows = ownTextsOf(page).filter(({ text }) => text.startsWith('× '));
      expect(rows.length).toBeLessThanOrEqual(8);
    }
  });
});

describe('the layout of a card', () => {
  it('sets what one acts on in 14 points or more: row numbers, clock, paces, count, camera numbers', () => {
    const [page] = pagesOf(cardWith(2)) as [Page];
    const acted = ['1', '2', '2:30', '8', '3 s', '10 s', '400', '4200', '8.0 m'];
    for (const words of acted) {
      const sizes = ownTextsOf(page)
        .filter(({ text }) => text === words)
        .map(({ style }) => style.points);
      expect(sizes, words).not.toEqual([]);
      expect(Math.min(...sizes), words).toBeGreaterThanOrEqual(14);
    }
  });

  it('holds eight rows on one page of A4, and six on one of Letter', () => {
    expect(pagesOf(cardWith(8))).toHaveLength(1);
    expect(pagesOf(cardWith(6, { paper: 'letter' }))).toHaveLength(1);
    expect(pagesOf(cardWith(9))).toHaveLength(2);
  });

  it('goes in the order that the trade wants, and numbers its pages', () => {
    const [page] = pagesOf(cardWith(3, { cautions: [caution('warning')] })) as [Page];
    const words = textsOf(page).map(({ text }) => text);
    const order = [
      'Test',
      'Moon',
      'Dark',
      'Permission',
      'N',
      'clock',
      'COUNT',
      'Camera: 18 mm lens',
      'If it came out',
      'Where I must not stand',
      'As planned',
      'Without lamps',
    ];
    const places = order.map((each) => words.indexOf(each));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    const titles = pagesOf(cardWith(30)).map((each, i, all) => [
      ownTextsOf(each).some(({ text }) => text === `Card ${i + 1} of ${all.length}`),
      all.length > 1,
    ]);
    expect(new Set(titles.flat())).toEqual(new Set([true]));
  });

  it('names dangers even where there is no room for all cautions, whole, and says how many are left', () => {
    const many = [
      caution('danger', 1, 'cannot-walk'),
      ...Array.from({ length: 30 }, (_, i) => caution('warning', null, `other-${i}`)),
    ];
    const words = ownTextsOf(pagesOf(cardWith(8, { cautions: many }))[0] as Page).map(({ text }) => text);
    expect(words).toContain('DANGER, row 1: can’t be walked in time: split the frame, or ask a helper.');
    expect(words.some((text) => /^And \d+ more: see the screen\.$/.test(text))).toBe(true);
    expect(words.filter((text) => text.endsWith('…'))).toEqual([]);
  });

  it('gives each further card the cautions of its rows', () => {
    const cautions = Array.from({ length: 11 }, (_, i) => caution('danger', i + 2, 'cannot-walk'));
    const texts = pagesOf(cardWith(12, { cautions })).map((page) =>
      ownTextsOf(page).flatMap(({ text }) => (text.startsWith('DANGER') ? [text.split(':')[0]] : [])),
    );
    expect(texts.flat()).toHaveLength(texts.length);
    expect(texts.flat()[0]).toMatch(/^DANGER, rows 2–\d$/);
    expect(texts.flat().at(-1)).toMatch(/–12$/);
  });

  it('leaves room for a pencil: a box to tick of 4.8 mm, and 35 mm or more for what was done', () => {
    const [page] = pagesOf(cardWith(1)) as [Page];
    const did = ownTextsOf(page).find(({ text }) => text === 'I did');
    expect(page.widthMm - 8 - (did?.x ?? Number.NaN)).toBeGreaterThanOrEqual(35);
  });

  it('says with each row which pass it is, what heights are over and where clock and paces count from', () => {
    for (const rows of [2, 8]) {
      const words = ownTextsOf(pagesOf(cardWith(rows))[0] as Page).map(({ text }) => text);
      expect(words.filter((text) => text === 'Key')).toHaveLength(rows);
      expect(words).toContain('from the mark');
      expect(words).toContain('over the ground there');
      if (rows === 2) expect(words).toContain('where the lamp points');
    }
  });

  it('sets two things before a lamp on two lines, none cut', () => {
    const card = cardWith(1, {}, { gelWord: '1/4 CTO + snoot 10°' });
    const words = ownTextsOf(pagesOf(card)[0] as Page).map(({ text }) => text);
    expect(words.some((text) => text === '1/4 CTO' || text === '1/4 CTO +')).toBe(true);
    expect(words).toContain('snoot 10°');
  });

  it('does without pictures where there are none', () => {
    const [page] = pagesOf(cardWith(2), null) as [Page];
    expect(everyShape(page.shapes).filter(({ kind }) => kind === 'picture')).toEqual([]);
    expect(ownTextsOf(page).map(({ text }) => text)).not.toContain('As planned');
  });

  it('measures with the very letters that it sets: a point is 1/72 inch', () => {
    const wide = font.measure('COUNT', { points: 11, weight: 700 });
    expect(font.measure('COUNT', { points: 22, weight: 700 })).toBeCloseTo(2 * wide, 9);
    expect(millimetresPerPoint * 72).toBeCloseTo(25.4, 12);
  });
});
