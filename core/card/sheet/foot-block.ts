import type { CardCaution, FieldCard } from '../field-card.ts';
import type { Measure } from './shapes.ts';
import { type Block, paragraphs, stacked, textLines } from './text-lines.ts';
import { type } from './type.ts';
import { wrapped } from './wrap-text.ts';

const severityWords = { danger: 'DANGER', warning: 'Warning', note: 'Note' } as const;

const cautionText = ({ severity, message, rowNumber, frameNumber }: CardCaution): string => {
  const where = rowNumber !== null ? `, row ${rowNumber}` : frameNumber !== null ? `, frame ${frameNumber}` : '';
  return `${severityWords[severity]}${where}: ${message}`;
};

/** Lines of the cautions that a number of lines holds: each as far as there is room, at least one line, gravest first. */
const cautionLines = (card: FieldCard, width: number, measure: Measure, most: number): string[] => {
  const all = card.cautions.map((caution) => wrapped(cautionText(caution), type.body, width, measure));
  if (all.flat().length <= most) return all.flat();
  // two lines each say what is wrong; what to do about it is on screen
  const shown = card.cautions.slice(0, Math.max(Math.floor((most - 1) / 2), 0));
  const left = card.cautions.length - shown.length;
  const lines = shown.flatMap((caution) => wrapped(cautionText(caution), type.body, width, measure, 2));
  const more = left === 0 ? [] : [`${left === 1 ? 'One more caution' : `${left} more cautions`} on the screen.`];
  return [...lines, ...more];
};

/** Cautions of the scheme in at most so many lines, and what holds always. */
export const footBlock = (
  card: FieldCard,
  x: number,
  top: number,
  width: number,
  measure: Measure,
  mostLines: number,
): Block => {
  const cautions = mostLines > 0 ? cautionLines(card, width, measure, mostLines) : [];
  return stacked(top, [
    (at) => textLines(cautions, type.body, x, at),
    (at) =>
      paragraphs([card.safety.join(' ')], type.body, {
        x,
        top: at + (cautions.length > 0 ? 0.8 : 0),
        width,
        measure,
      }),
  ]);
};
