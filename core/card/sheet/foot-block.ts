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

/**
 * The cautions in a number of lines, gravest first: each whole where all have room, else in two lines, else in one; what
 * has no line is counted.
 */
export const cautionLines = (card: FieldCard, width: number, measure: Measure, most: number): string[] => {
  const texts = card.cautions.map(cautionText);
  const inLines = (each: number) => texts.flatMap((text) => wrapped(text, type.body, width, measure, each));
  const whole = [Number.POSITIVE_INFINITY, 2, 1].map(inLines).find((lines) => lines.length <= most);
  if (whole) return whole;
  const shown = inLines(1).slice(0, Math.max(most - 1, 0));
  return [...shown, `${texts.length - shown.length} more on the screen.`];
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
