import type { CardRow, CardStand } from '../card-row.ts';
import { countText, lengthText, levelText, onText, pacesText, roundText } from '../card-words.ts';
import type { FieldCard } from '../field-card.ts';
import { numberCircle } from '../plan/row-shapes.ts';
import { type ColumnKey, rowColumns } from './row-columns.ts';
import type { Measure, Shape, TextStyle } from './shapes.ts';
import { type Block, textLines } from './text-lines.ts';
import { capMm, lineMm, type } from './type.ts';
import { shortened, wrapped } from './wrap-text.ts';

const headMm = 10.8;
/** Of a line with a pass’s name over its row. */
const nameMm = 4.9;
/** Of the column of numbers. */
const numberMm = 9.2;
/** What stands over heads: where clock and paces count from, what heights are over, and of two numbers the upper. */
const overWords: Partial<Record<ColumnKey, string>> = {
  clock: 'from the mark',
  height: 'over the ground there',
  strokes: 'strokes',
};
/** Height of a row whose places take so much each: a lamp that moves has two. */
export const heightOfRow = ({ end }: Pick<CardRow, 'end'>, each: number): number => (end ? 2 : 1) * each;

/** Baselines of the two lines of a cell below the row's top. */
const firstLine = (height: number) => height / 2 - 0.5;
const secondLine = (height: number) => height / 2 + 3.9;

const text = (words: string, style: TextStyle, x: number, y: number): Shape => ({
  kind: 'text',
  text: words,
  style,
  anchor: 'start',
  x,
  y,
});
const rule = (x: number, y: number, width: number, weight: number): Shape => ({
  kind: 'line',
  x1: x,
  y1: y,
  x2: x + width,
  y2: y,
  width: weight,
});

/** What stands large in a cell; smaller, under it; and a number that goes with the latter. */
type Cell = readonly [large: string, small: string, style?: TextStyle, number?: string];

const placeCells = (stand: CardStand, { lengths }: FieldCard): Partial<Record<ColumnKey, Cell>> => ({
  clock: [stand.clock, roundText(stand), type.strongNumeral],
  paces: [pacesText(stand.paces), lengthText(stand.distanceMetres, lengths), type.strongNumeral],
  height: [stand.heightWord, lengthText(stand.heightMetres, lengths), type.strong],
});

const lampCells = (row: CardRow): Partial<Record<ColumnKey, Cell>> => ({
  level: [levelText(row.levelPercent), row.lampName, type.numeral],
  count: [row.staysOn ? 'all' : `${countText(row)} s`, onText(row), type.count],
  strokes: [`× ${row.strokes}`, 'fr.', type.numeral, `${row.frameNumber}`],
});

/** What is in front of the lamp: each thing on a line of its own where two lines hold them, else one after the other. */
const gelLines = ({ gelWord }: CardRow, room: number, measure: Measure): string[] => {
  const [first = '', ...others] = gelWord.split(' + ');
  const fits = (lines: readonly string[]) => lines.every((line) => measure(line, type.body) <= room);
  const rest = others.join(' + ');
  const listed =
    rest === ''
      ? [[first]]
      : [
          [`${first} +`, rest],
          [first, rest],
        ];
  return listed.find(fits) ?? wrapped(gelWord, type.body, room, measure, 2);
};

/** One row of the table. */
const rowShapes = (
  row: CardRow,
  card: FieldCard,
  x: number,
  over: number,
  width: number,
  each: number,
  measure: Measure,
  hasNameLine: boolean,
) => {
  const top = over + (hasNameLine ? nameMm : 0);
  const height = heightOfRow(row, each);
  const nameAt = x + numberMm;
  const shapes: Shape[] = hasNameLine
    ? [text(shortened(row.name, type.strong, width - numberMm, measure), type.strong, nameAt, over + 4.4)]
    : [];
  const cells = { ...placeCells(row.start, card), ...lampCells(row) };
  const endCells = row.end ? placeCells(row.end, card) : {};
  let left = x;
  for (const { key, widthMm } of rowColumns(width)) {
    const room = widthMm - 1.6;
    const put = ([large, small, style = type.body, number]: Cell, at: number) => {
      shapes.push(text(large, style, left, at + firstLine(each)));
      for (const line of wrapped(small, type.body, room, measure, 1))
        shapes.push(text(line, type.body, left, at + secondLine(each)));
      const after = left + measure(`${small} `, type.body);
      if (number) shapes.push(text(number, type.numeral, after, at + secondLine(each)));
    };
    const cell = cells[key];
    const end = endCells[key];
    if (key === 'number') shapes.push(...numberCircle(row.number, [left + 4.1, top + each / 2]));
    else if (key === 'aim' && !hasNameLine) {
      shapes.push(text(shortened(row.name, type.strong, room, measure), type.strong, left, top + firstLine(each)));
      shapes.push(text(shortened(row.aimWord, type.body, room, measure), type.body, left, top + secondLine(each)));
    } else if (key === 'aim' || key === 'gel') {
      const lines = key === 'aim' ? wrapped(row.aimWord, type.body, room, measure, 2) : gelLines(row, room, measure);
      const middle = top + each / 2 - ((lines.length - 1) * lineMm(type.body) + capMm(type.body)) / 2;
      shapes.push(...textLines(lines, type.body, left, middle).shapes);
    } else if (key === 'done') {
      const y = top + each / 2 - 2.4;
      const d = `M${left} ${y}L${left + 4.8} ${y}L${left + 4.8} ${y + 4.8}L${left} ${y + 4.8}Z`;
      shapes.push({ kind: 'path', path: d, width: 0.3, fill: 'none' });
    } else if (cell) put(cell, top);
    if (end) {
      put(end, top + each);
      if (key === 'clock') shapes.push(text('to', type.body, left - 5.4, top + each + firstLine(each)));
    }
    left += widthMm;
  }
  return { shapes: [...shapes, rule(x, top + height, width, 0.18)], bottom: top + height };
};

/** The passes, a numbered row each, its name over it or, where rows are close, over its aim; with a box to tick and room for what was done. */
export const rowsTable = (
  card: FieldCard,
  x: number,
  top: number,
  width: number,
  measure: Measure,
  each: number,
  hasNameLine: boolean,
): Block => {
  let left = x;
  const overHeads: Shape[] = [];
  const heads = rowColumns(width).map(({ key, head, widthMm }): Shape => {
    const at = left;
    left += widthMm;
    const over = overWords[key];
    if (over) overHeads.push(text(over, type.body, at, top + headMm - 6.2));
    return text(head, head === 'COUNT' ? type.strong : type.body, at, top + headMm - 1.7);
  });
  const shapes: Shape[] = [
    ...overHeads,
    ...heads.filter((head) => head.kind !== 'text' || head.text !== ''),
    rule(x, top + headMm, width, 0.4),
  ];
  let bottom = top + headMm;
  for (const row of card.rows) {
    const block = rowShapes(row, card, x, bottom, width, each, measure, hasNameLine);
    shapes.push(...block.shapes);
    bottom = block.bottom;
  }
  return { shapes, bottom };
};
