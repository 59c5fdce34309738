import { encode } from 'fast-png';
import { beforeAll, describe, expect, it } from 'vitest';
import { greyPictures } from '../../../app/card/grey-pictures.ts';
import { pdfOfPages } from '../../../app/card/pdf-of-pages.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { cardWith, font, pagesOf } from './cards.ts';
import { findPoppler, pixelsOfPdf, poppler } from './find-poppler.ts';

/** A picture whose right half is full of one colour. */
const half = (colour: readonly [number, number, number]) => {
  const [width, height] = [60, 40];
  const data = new Uint8Array(width * height * 3);
  for (let p = 0; p < width * height; p++) if (p % width >= width / 2) data.set(colour, p * 3);
  return { width, height, data };
};
const pictures = greyPictures(half([250, 120, 40]), half([30, 30, 60]));

const pdfOf = (card: FieldCard): Promise<Uint8Array> => pdfOfPages(pagesOf(card), 'Field card: Test', font, pictures);

// poppler is a reader of PDF that shares nothing with the writer
describe('the PDF, read by poppler', () => {
  const card = cardWith(3, { setupName: 'Łódź: Ærø & “Fjörður”', permission: 'Asked at the farm: yes' });
  let pdf: Uint8Array;
  beforeAll(async () => {
    findPoppler();
    pdf = await pdfOf(card);
  });

  it.each([
    ['a4', 210, 297],
    ['letter', 215.9, 279.4],
  ] as const)('is one page of %s, true to a tenth of a millimetre', async (paper, widthMm, heightMm) => {
    const info = poppler('pdfinfo', await pdfOf(cardWith(2, { paper })));
    expect(info).toMatch(/Pages:\s+1\n/);
    const [, width, height] = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(info)?.map(Number) ?? [];
    expect(((width ?? 0) * 25.4) / 72).toBeCloseTo(widthMm, 1);
    expect(((height ?? 0) * 25.4) / 72).toBeCloseTo(heightMm, 1);
  });

  it('takes a page for each card of a long scheme', async () => {
    const long = cardWith(20);
    const count = pagesOf(long).length;
    expect(count).toBeGreaterThan(2);
    expect(poppler('pdfinfo', await pdfOf(long))).toMatch(new RegExp(`Pages:\\s+${count}\\n`));
  });

  it('has its text as text, letters beyond ASCII among it', () => {
    const text = poppler('pdftotext', pdf, ['-layout'], ['-']);
    for (const words of [
      'Łódź: Ærø & “Fjörður”',
      'Asked at the farm: yes',
      '2:30',
      'right 105°',
      'knee',
      '1/4 CTO',
      'COUNT',
      '4200',
      'If it came out',
      'Never light eyes',
    ])
      expect(text).toContain(words);
  });

  it('embeds its fonts, cut down to what is used, with the way back to Unicode', () => {
    const lines = poppler('pdffonts', pdf).trim().split('\n').slice(2);
    expect(lines.length).toBeGreaterThanOrEqual(2);
    for (const line of lines)
      expect(line).toMatch(/AtkinsonHyperlegibleNext-\w+\s+CID TrueType\s+Identity-H\s+yes yes yes/);
  });

  it('sets no type under 11 points (as poppler measures the boxes of words)', () => {
    const boxes = poppler('pdftotext', pdf, ['-bbox-layout'], ['-']);
    const words = [...boxes.matchAll(/<word [^>]*yMin="([\d.]+)"[^>]*yMax="([\d.]+)">([^<]*)</g)];
    expect(words.length).toBeGreaterThan(100);
    // a word's box is the ascent and descent of its font, at least the size of the type
    for (const [, yMin, yMax, word] of words) expect(Number(yMax) - Number(yMin), word).toBeGreaterThanOrEqual(10.9);
  });

  it('is black and grey alone: red, green and blue of every pixel are the same, and there are many greys', () => {
    const { width, height, data } = pixelsOfPdf(pdf, 75);
    expect([width, height]).toEqual([Math.ceil((210 / 25.4) * 75), Math.ceil((297 / 25.4) * 75)]);
    let coloured = 0;
    const greys = new Set<number>();
    for (let i = 0; i < data.length; i += 3) {
      if (data[i] !== data[i + 1] || data[i] !== data[i + 2]) coloured++;
      greys.add(data[i] as number);
    }
    expect(coloured).toBe(0);
    expect(greys.has(255)).toBe(true);
    expect(greys.size).toBeGreaterThan(20);
  });

  it('the check sees colour where there is some', async () => {
    const red = encode({ width: 1, height: 1, channels: 3, depth: 8, data: new Uint8Array([200, 0, 0]) });
    const { data } = pixelsOfPdf(await pdfOfPages(pagesOf(card), 'Red', font, { lit: red }), 30);
    const coloured = data.filter((value, i) => i % 3 === 0 && value !== data[i + 1]).length;
    expect(coloured).toBeGreaterThan(100);
  });
});
