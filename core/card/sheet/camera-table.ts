import { apertureText, focusText, shutterText } from '../card-words.ts';
import type { CardFrame, FieldCard } from '../field-card.ts';
import type { Measure, Shape, TextStyle } from './shapes.ts';
import { type Block, paragraphs } from './text-lines.ts';
import { type } from './type.ts';
import { shortened } from './wrap-text.ts';

/** Height of a line of the camera block, and of what stands over it. */
const frameMm = 6.3;
const cameraHeadMm = 10.6;

type Cells = readonly string[];

const heads: Cells = ['frame', '', 'f', 'shutter', 'ISO', 'K', 'focus', 'sharp', 'delay', 'gap', 'count'];
const nameColumn = 1;
/** Which of them are words and ranges to read, not numbers to set. */
const styleOf = (column: number): TextStyle => (column === nameColumn || column === 7 ? type.body : type.numeral);
/** Between columns: at least so much, and at most as much more as there is. */
const columnGap = { least: 2.6, most: 6 };
/** The least that is left to the names. */
const leastNameMm = 24;

/** Columns as wide as what stands in them; the names take what is left. */
const columnWidths = (rows: readonly Cells[], width: number, measure: Measure): number[] => {
  const own = heads.map((head, c) =>
    Math.max(measure(head, type.body), ...rows.map((cells) => measure(cells[c] as string, styleOf(c)))),
  );
  const taken = own.reduce((sum, each, c) => sum + (c === nameColumn ? 0 : each), 0);
  const names = Math.min(own[nameColumn] as number, 60);
  const spare = (width - taken - Math.max(names, leastNameMm)) / (heads.length - 1);
  const gap = Math.min(Math.max(spare, columnGap.least), columnGap.most);
  const others = own.map((each, c) => (c === nameColumn ? 0 : each + gap));
  // nothing follows the last
  const rest = width - others.reduce((sum, each) => sum + each, 0) + gap;
  return others.map((each, c) => (c === nameColumn ? rest : each));
};

const sharpText = ({ sharpFromMetres, sharpToMetres }: CardFrame, lengths: FieldCard['lengths']): string =>
  sharpFromMetres === null ? '–' : `${focusText(sharpFromMetres, lengths)} to ${focusText(sharpToMetres, lengths)}`;

const cellsOf = (frame: CardFrame, { lengths }: FieldCard): Cells => [
  frame.count > 1 ? `${frame.number}–${frame.number + frame.count - 1}` : String(frame.number),
  frame.name,
  apertureText(frame),
  `${shutterText(frame)} s`,
  String(Math.round(frame.iso)),
  String(Math.round(frame.kelvin)),
  focusText(frame.focusMetres, lengths),
  sharpText(frame, lengths),
  `${Number(frame.delaySeconds.toFixed(1))} s`,
  frame.gapSeconds === null ? '–' : `${Number(frame.gapSeconds.toFixed(1))} s`,
  String(frame.count),
];

/** The steps of focus stacks, a sentence each. */
const focusTexts = ({ focusStacks, lengths }: FieldCard): string[] =>
  focusStacks.map(
    ({ frameNumbers, focusMetres }) =>
      `Focus steps, frames ${frameNumbers.join(', ')}: ${focusMetres.map((metres) => focusText(metres, lengths)).join(', ')}. Turn the ring and touch nothing else.`,
  );

/** The camera block: lens, then a line per shutter opening, then the focus steps. */
export const cameraTable = (card: FieldCard, x: number, top: number, width: number, measure: Measure): Block => {
  const rows = card.frames.map((frame) => cellsOf(frame, card));
  const columns = columnWidths(rows, width, measure);
  const shapes: Shape[] = [];
  const put = (words: string, style: TextStyle, left: number, y: number) => {
    if (words !== '') shapes.push({ kind: 'text', text: words, style, anchor: 'start', x: left, y });
  };
  const lens = Number(card.camera.focalLengthMm.toFixed(1));
  put(`Camera: ${lens} mm lens`, type.strong, x, top + 3.6);
  const line = (cells: Cells, style: (c: number) => TextStyle, y: number) => {
    let left = x;
    cells.forEach((cell, c) => {
      const room = (columns[c] as number) - 1.2;
      put(c === nameColumn ? shortened(cell, style(c), room, measure) : cell, style(c), left, y);
      left += columns[c] as number;
    });
  };
  line(heads, () => type.body, top + 8.9);
  let bottom = top + cameraHeadMm;
  shapes.push({ kind: 'line', x1: x, y1: bottom, x2: x + width, y2: bottom, width: 0.4 });
  for (const cells of rows) {
    line(cells, styleOf, bottom + 4.9);
    bottom += frameMm;
    shapes.push({ kind: 'line', x1: x, y1: bottom, x2: x + width, y2: bottom, width: 0.18 });
  }
  const focus = paragraphs(focusTexts(card), type.body, { x, top: bottom + 1.6, width, measure });
  return { shapes: [...shapes, ...focus.shapes], bottom: focus.bottom };
};
