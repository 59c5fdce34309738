import { harmCodes } from '../cautions/harm-codes.ts';
import { cautionShorts } from './caution-shorts.ts';
import type { CardCaution } from './field-card.ts';

/** "2–4, 7" of whole numbers in any order. */
export const rangesText = (numbers: readonly number[]): string => {
  const runs: [number, number][] = [];
  for (const each of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && each === last[1] + 1) last[1] = each;
    else runs.push([each, each]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}${to > from + 1 ? '–' : ', '}${to}`)).join(', ');
};

/** "DANGER" for harm alone, "Watch" for what spoils the picture, nothing for a note. */
export const cautionWord = ({ code, severity }: Pick<CardCaution, 'code' | 'severity'>): string =>
  harmCodes.has(code) ? 'DANGER' : severity === 'note' ? '' : 'Watch';

const weights: readonly string[] = ['DANGER', 'Watch', ''];

const placeOf = (cautions: readonly CardCaution[]): string => {
  const rows = cautions.flatMap(({ rowNumber }) => rowNumber ?? []);
  const frames = cautions.flatMap(({ rowNumber, frameNumber }) => (rowNumber === null ? (frameNumber ?? []) : []));
  const named = (word: string, numbers: readonly number[]) =>
    numbers.length === 0 ? [] : [`${word}${new Set(numbers).size > 1 ? 's' : ''} ${rangesText(numbers)}`];
  return [...named('row', rows), ...named('frame', frames)].join(', ');
};

/** The cautions of a card short, those of one kind together, harm first: "DANGER, rows 2–11: can’t be walked in time …". */
export const cautionTexts = (cautions: readonly CardCaution[]): string[] => {
  const kinds = new Map<string, CardCaution[]>();
  for (const caution of cautions) {
    const key = `${weights.indexOf(cautionWord(caution))} ${caution.code}`;
    kinds.set(key, [...(kinds.get(key) ?? []), caution]);
  }
  return [...kinds]
    .sort(([a], [b]) => Number(a[0]) - Number(b[0]))
    .map(([, all]) => {
      const [first] = all as [CardCaution];
      const head = [cautionWord(first), placeOf(all)].filter((words) => words !== '').join(', ');
      const words = `${head === '' ? '' : `${head}: `}${cautionShorts[first.code] ?? first.message}`;
      return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
    });
};
