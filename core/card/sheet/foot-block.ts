import { cautionTexts } from '../caution-lines.ts';
import type { FieldCard } from '../field-card.ts';
import type { Measure } from './shapes.ts';
import { type Block, paragraphs, stacked, textLines } from './text-lines.ts';
import { type } from './type.ts';
import { wrapped } from './wrap-text.ts';

/** The cautions in a number of lines, harm first: each whole or not at all; what has no room is counted. */
export const cautionLines = (card: FieldCard, width: number, measure: Measure, most: number): string[] => {
  const texts = cautionTexts(card.cautions).map((text) => wrapped(text, type.body, width, measure));
  const lengthOf = (count: number) => texts.slice(0, count).reduce((sum, { length }) => sum + length, 0);
  if (lengthOf(texts.length) <= most) return texts.flat();
  let count = texts.length - 1;
  while (count > 0 && lengthOf(count) > most - 1) count -= 1;
  return [...texts.slice(0, count).flat(), `And ${texts.length - count} more: see the screen.`];
};

/** Cautions of the scheme in at most so many lines, one or more, and what holds always. */
export const footBlock = (
  card: FieldCard,
  x: number,
  top: number,
  width: number,
  measure: Measure,
  mostLines: number,
): Block => {
  const cautions = cautionLines(card, width, measure, mostLines);
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
