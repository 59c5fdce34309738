import type { FieldCard } from '../field-card.ts';
import { sightTexts } from '../sight-texts.ts';
import type { Measure } from './shapes.ts';
import { type Block, paragraphs, stacked, textLines } from './text-lines.ts';
import { type } from './type.ts';

/** The stop rules, and where not to stand. */
export const rulesBlock = (card: FieldCard, x: number, top: number, width: number, measure: Measure): Block => {
  const head = (words: string) => (at: number) => textLines([words], type.strong, x, at);
  const body = (texts: readonly string[]) => (at: number) =>
    paragraphs(texts, type.body, { x, top: at + 0.6, width, measure });
  const space = (at: number): Block => ({ shapes: [], bottom: at + 1.8 });
  return stacked(top, [
    head('If it came out'),
    body(card.stopRules.map(({ fault, remedy }) => `${fault}: ${remedy}.`)),
    space,
    head('Where I must not stand'),
    body(sightTexts(card.sight)),
  ]);
};
