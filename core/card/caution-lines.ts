import { harmCodes } from '../cautions/harm-codes.ts';
import type { CardCaution, FieldCard } from './field-card.ts';
import type { RunStep } from './run-steps.ts';

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

const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;

/** The cautions of a card short, those of one kind together, harm first: "DANGER, rows 2–11: can’t be walked in time …". */
export const cautionTexts = (cautions: readonly CardCaution[]): string[] => {
  const kinds = new Map<string, CardCaution[]>();
  for (const caution of cautions) {
    const key = `${weights.indexOf(cautionWord(caution))} ${caution.code} ${caution.short}`;
    kinds.set(key, [...(kinds.get(key) ?? []), caution]);
  }
  return [...kinds]
    .sort(([a], [b]) => Number(a[0]) - Number(b[0]))
    .map(([, all]) => {
      const [first] = all as [CardCaution];
      const head = [cautionWord(first), placeOf(all)].filter((words) => words !== '').join(', ');
      return sentence(`${head === '' ? '' : `${head}: `}${first.short}`);
    });
};

/** What a step of the night is warned of: word and sentence, each once. */
export interface StepCaution extends Pick<CardCaution, 'code' | 'severity'> {
  /** "DANGER", "Watch". */
  readonly word: string;
  /** "Can’t be walked in time: split the frame, or ask a helper." */
  readonly text: string;
}

/**
 * Dangers and warnings of a step, harm first: those of its pass, and those of its frame and of the whole scheme at the
 * frame’s first step.
 */
export const stepCautions = ({ cautions, frames }: FieldCard, step: RunStep): StepCaution[] => {
  const rowNumber = step.kind === 'pass' ? step.row.number : null;
  const frame =
    step.kind === 'frame' ? step.frame : frames.find(({ rowNumbers }) => rowNumbers.includes(step.row.number));
  const isFirst = rowNumber === null || frame?.rowNumbers[0] === rowNumber;
  const isOfFrame = (n: number) => frame !== undefined && n >= frame.number && n < frame.number + frame.count;
  const concerns = (each: CardCaution) =>
    each.rowNumber === null
      ? isFirst && (each.frameNumber === null || isOfFrame(each.frameNumber))
      : each.rowNumber === rowNumber;
  const own = cautions
    .filter((each) => each.severity !== 'note' && concerns(each))
    .map(
      (each): StepCaution => ({
        code: each.code,
        severity: each.severity,
        word: cautionWord(each),
        text: sentence(each.short),
      }),
    );
  return own
    .filter(({ text }, i) => own.findIndex((each) => each.text === text) === i)
    .sort((a, b) => weights.indexOf(a.word) - weights.indexOf(b.word));
};
