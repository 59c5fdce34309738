import { describe, expect, it } from 'vitest';
import type { CardRow } from '../../../core/card/card-row.ts';
import type { CardCaution, CardFrame, FieldCard } from '../../../core/card/field-card.ts';
import { cameraTable } from '../../../core/card/sheet/camera-table.ts';
import { cardParts } from '../../../core/card/sheet/card-parts.ts';
import { factsBlock } from '../../../core/card/sheet/facts-block.ts';
import { layOutCard } from '../../../core/card/sheet/lay-out-card.ts';
import { rowsTable } from '../../../core/card/sheet/rows-table.ts';
import { everyShape, type Measure, type Page, type Shape } from '../../../core/card/sheet/shapes.ts';
import { type SvgElement, svgTree } from '../../../core/card/sheet/svg-tree.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

/** Every letter so many millimetres wide. */
const lettersOf =
  (millimetres: number): Measure =>
  (text) =>
    millimetres * [...text].length;
const measure = lettersOf(1);
const wordsOf = (shapes: readonly Shape[]) =>
  everyShape(shapes).flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));

const card = cardOf(stoneSetup(passFrom('Key', 2.5, 6, 0.5)));
const frame = card.frames[0] as CardFrame;
const row = card.rows[0] as CardRow;

describe('cameraTable', () => {
  const words = (change: Partial<CardFrame>) =>
    wordsOf(cameraTable({ ...card, frames: [{ ...frame, ...change }] }, 0, 0, 400, measure).shapes);

  it('says from where to where a frame is sharp, and a dash where its focus is nearer than the lens can', () => {
    expect(words({ sharpFromMetres: 2.5, sharpToMetres: null })).toContain('2.5 m to infinity');
    expect(words({ sharpFromMetres: null, sharpToMetres: null, gapSeconds: 1 })).toContain('–');
  });
});

describe('rowsTable', () => {
  const words = (change: Partial<CardRow>) =>
    wordsOf(rowsTable({ ...card, rows: [{ ...row, ...change }] }, 0, 0, 400, measure, 11, true).shapes);

  it('has seconds to count and when the lamp goes on; nothing to count for a lamp that stays on', () => {
    expect(words({})).toEqual(expect.arrayContaining(['3 s', 'at 0 s']));
    expect(words({ staysOn: true })).toEqual(expect.arrayContaining(['all', 'stays on']));
    expect(words({ staysOn: true })).not.toContain('all s');
  });
});

describe('factsBlock', () => {
  const words = (of: FieldCard) => wordsOf(factsBlock(of, 0, 0, 400, measure).shapes);

  it('says where the camera stands and looks, and what the mark is', () => {
    expect(words(card)).toEqual(expect.arrayContaining(['9.0 m, 1.2 m high, looks 0° N', 'stone']));
  });

  it('gives no bearing to a camera that looks straight down, and names the mark of a scheme that is about nothing', () => {
    const other = {
      ...card,
      camera: { ...card.camera, bearingDegrees: null },
      mark: { ...card.mark, subjectName: null },
    };
    expect(words(other)).toEqual(expect.arrayContaining(['9.0 m, 1.2 m high', 'where the camera looks']));
  });
});

describe('cardParts', () => {
  const two: FieldCard = {
    ...card,
    rows: [row, { ...row, number: 2 }],
    frames: [frame, { ...frame, number: 2, rowNumbers: [2] }],
  };
  const caution = (rowNumber: number | null, frameNumber: number | null): CardCaution => ({
    code: 'unheard-of',
    severity: 'note',
    message: '',
    short: `${rowNumber} ${frameNumber}`,
    rowNumber,
    frameNumber,
  });

  it('puts what is said of a row or a frame on the page that has it, and what is said of all on each', () => {
    const cautions = [caution(1, 1), caution(2, 2), caution(null, 1), caution(null, 2), caution(null, null)];
    const pages = cardParts({ ...two, cautions }, ({ rows }) => rows.length < 2);
    expect(pages.map((page) => page.cautions.map(({ short }) => short))).toEqual([
      ['1 1', 'null 1', 'null null'],
      ['2 2', 'null 2', 'null null'],
    ]);
  });
});

describe('layOutCard', () => {
  it('sets as closely as it can what has no room on any page, and leaves nothing out', () => {
    const steps = Array.from({ length: 400 }, (_, i) => 1 + i / 10);
    const full = { ...card, focusStacks: [{ frameNumbers: [1], focusMetres: steps }] };
    const plan = { subjects: [], hazards: [], walks: [], northDegrees: 0 };
    const [page, ...more] = layOutCard(full, { plan, aspect: 1.5, measure: lettersOf(2) }) as [Page];
    expect(more).toEqual([]);
    // the smallest pictures are 30 mm wide
    const widths = page.shapes.flatMap((shape) => (shape.kind === 'picture' ? [shape.width] : []));
    expect(widths).toEqual([30, 30]);
    const words = wordsOf(page.shapes).join(' ');
    for (const length of ['1.0 m', '10.5 m', '19.9 m', '41 m']) expect(words).toContain(length);
  });
});

describe('svgTree', () => {
  const page: Page = {
    widthMm: 100,
    heightMm: 50,
    shapes: (['lit', 'unlit'] as const).map((name, i) => ({
      kind: 'picture',
      name,
      x: 5 + 45 * i,
      y: 10,
      width: 40,
      height: 30,
    })),
  };
  const imagesOf = ({ children }: SvgElement) =>
    typeof children === 'string'
      ? []
      : children.filter(({ tag }) => tag === 'image').map(({ attributes }) => attributes);

  it('has its pictures where the page has them, each stretched to its box; one that is missing is left out', () => {
    const lit = { x: '5', y: '10', width: '40', height: '30', href: 'blob:lit', preserveAspectRatio: 'none' };
    expect(imagesOf(svgTree(page, 'Card', { lit: 'blob:lit' }))).toEqual([lit]);
    expect(imagesOf(svgTree(page, 'Card'))).toEqual([]);
  });
});
