import type { CardRow, CardStand } from '../../../core/card/card-row.ts';
import {
  apertureText,
  countText,
  focusText,
  lengthText,
  levelText,
  pacesText,
  shutterText,
} from '../../../core/card/card-words.ts';
import type { CardFrame, FieldCard } from '../../../core/card/field-card.ts';
import { frameOfRow } from '../../../core/card/going-limits.ts';
import { movedStand } from '../../../core/card/moved-stand.ts';
import { placeTrouble } from '../../../core/card/place-trouble.ts';
import type { Going, Moved, Verdict } from '../../../core/card/stop-rule-steps.ts';

export const verdictWords: Readonly<Record<Verdict, string>> = {
  good: 'done',
  'too-bright': 'too bright',
  'too-dark': 'too dark',
  flat: 'flat',
  'not-said': 'gone',
};

export const secondsWords = (seconds: number): string => `${countText({ staysOn: false, countSeconds: seconds })} s`;

/** "Frame 2 of 3 · Painted"; like ones in a row, "Frames 1 to 3 of 5 · Sky". */
export const frameTitle = (card: FieldCard, { number, count, name }: CardFrame): string => {
  const frames = card.frames.reduce((sum, each) => sum + each.count, 0);
  const which = count > 1 ? `Frames ${number} to ${number + count - 1}` : `Frame ${number}`;
  return `${which} of ${frames} · ${name}`;
};

/** "12 s · f/2 · ISO 5000 · 3800 K · focus 4.2 m · delay 10 s": what the camera is set to, with its self-timer. */
export const exposureWords = ({ lengths }: FieldCard, frame: CardFrame): string =>
  [
    `${shutterText(frame)} s`,
    `f/${apertureText(frame)}`,
    `ISO ${Math.round(frame.iso)}`,
    `${Math.round(frame.kelvin)} K`,
    `focus ${focusText(frame.focusMetres, lengths)}`,
    `delay ${secondsWords(frame.delaySeconds)}`,
  ].join(' · ');

/** What to do for frames without a lamp; while one is exposed, what is still to be heeded. */
export const unlitWords = ({ count, gapSeconds }: CardFrame, isRunning: boolean): string => {
  const keepOff = 'Keep all lamps off.';
  if (isRunning) return keepOff;
  if (count === 1) return `Open the shutter. ${keepOff}`;
  return `Open the shutter ${count} times${gapSeconds ? `, ${secondsWords(gapSeconds)} apart` : ''}. ${keepOff}`;
};

/** "Frame 2 of 3 · Painted", and what the camera is set to for it. */
export const frameWords = (card: FieldCard, row: CardRow): readonly [string, string] => {
  const frame = frameOfRow(card, row);
  return [frameTitle(card, frame), `shutter ${exposureWords(card, frame)}`];
};

/** "overhead, 2.1 m". */
export const heightWords = (
  { heightWord, heightMetres }: Pick<CardStand, 'heightWord' | 'heightMetres'>,
  { lengths }: Pick<FieldCard, 'lengths'>,
): string => `${heightWord}, ${lengthText(heightMetres, lengths)}`;

/** Where to stand: "2:30 · 8 paces (6.0 m) · knee, 0.50 m". */
export const standWords = (card: FieldCard, row: CardRow, going: Moved): string => {
  const words = (planned: CardStand) => {
    const stand = movedStand(card, planned, going);
    const { clock, paces, distanceMetres } = stand;
    return `${clock} · ${pacesText(paces)} paces (${lengthText(distanceMetres, card.lengths)}) · ${heightWords(stand, card)}`;
  };
  return row.end ? `${words(row.start)}, to ${words(row.end)}` : words(row.start);
};

/** What is wrong with where the lamp was moved to; empty where nothing is. */
export const troubleWords = (card: FieldCard, row: CardRow, going: Moved): string => {
  const troubles = [row.start, ...(row.end ? [row.end] : [])].map((stand) =>
    placeTrouble(card, stand, movedStand(card, stand, going)),
  );
  if (troubles.includes('in-something')) return 'Something stands there: take the nearest place beside it.';
  return troubles.includes('in-picture') ? 'There the camera sees you, in front of the subject.' : '';
};

/** "full", "25 %": how bright the lamp is to be tonight. */
export const levelWords = ({ levelPercent }: CardRow, { levelTimes }: Pick<Going, 'levelTimes'>): string =>
  levelText(levelPercent * levelTimes);

const factorWords = ({ distanceTimes, hoursMoved, heightTimes }: Moved): string[] => [
  ...(distanceTimes === 1 ? [] : [`${distanceTimes.toFixed(1)} times as far from what it lit as planned`]),
  ...(hoursMoved === 0 ? [] : [hoursText(hoursMoved)]),
  ...(heightTimes === 1 ? [] : [`${heightTimes.toFixed(2)} times as high as planned`]),
];

const hoursText = (hoursMoved: number): string => {
  const hours = Number(Math.abs(hoursMoved).toFixed(1));
  return `${hours} ${hours === 1 ? 'hour' : 'hours'} ${hoursMoved > 0 ? 'on' : 'back'} round the clock`;
};

/** Where a pass of the log was, as the pass itself says it; where the plan has it no more, how that was against the plan. */
export const goneWords = (
  card: FieldCard | null,
  run: Omit<Going, 'seconds'> & { readonly frameId: string; readonly passId: string },
): string => {
  const row = card?.rows.find(({ frameId, passId }) => frameId === run.frameId && passId === run.passId);
  if (card && row)
    return `${standWords(card, row, run)}${run.levelTimes === 1 ? '' : ` · lamp ${levelWords(row, run)}`}`;
  const level = run.levelTimes === 1 ? [] : [`${run.levelTimes.toPrecision(2)} times the planned level`];
  return [...factorWords(run), ...level].join(' · ');
};
