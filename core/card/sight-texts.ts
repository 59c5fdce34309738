import { secondsText } from './card-words.ts';
import type { CardSight } from './field-card.ts';

const listText = (numbers: readonly number[]): string => numbers.join(', ');

/** Where not to stand and for how long one may, a sentence each. */
export const sightTexts = ({ stays, seenRows, hazardNames }: CardSight): string[] => {
  const bySeconds = new Map<string, number[]>();
  for (const { frameNumber, seconds } of stays) {
    const text = secondsText(seconds);
    bySeconds.set(text, [...(bySeconds.get(text) ?? []), frameNumber]);
  }
  const stay = [...bySeconds].map(([text, numbers]) => `${text} s in frame ${listText(numbers)}`);
  return [
    'Between the two lines on the plan the lens sees you; lamps and lit hands too.',
    ...(stay.length > 0 ? [`If you must: at one place at most ${stay.join('; ')}.`] : []),
    ...seenRows.map(({ number, seconds }) => `Row ${number}: you are seen for ${secondsText(seconds)} s.`),
    ...(hazardNames.length > 0 ? [`Keep off: ${hazardNames.join(', ')}.`] : []),
  ];
};
