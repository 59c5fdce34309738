import type { GuessReading } from '../../../core/readings/guess-reading.ts';
import { lengthWords } from '../ui/lengths.ts';
import type { TrueShadow } from './true-shadow.ts';

/** How good a guess was, and what is true: "You were 0.8 m and 6° off; the shadow is 3.2 m long." */
export const guessWords = (
  { offMetres, offDegrees }: GuessReading,
  { shadow, subjectName }: Pick<TrueShadow, 'shadow' | 'subjectName'>,
): string => {
  const off = [
    ...(offMetres === null ? [] : [lengthWords(offMetres, 1)]),
    ...(offDegrees === null ? [] : [`${offDegrees.toFixed(0)}°`]),
  ].join(' and ');
  const guess = off ? `You were ${off} off` : 'You pointed at its foot';
  return shadow.lengthMetres === null
    ? `${guess}; the lamp is no higher than “${subjectName}”, so the shadow has no end.`
    : `${guess}; the shadow is ${lengthWords(shadow.lengthMetres, 1)} long.`;
};
