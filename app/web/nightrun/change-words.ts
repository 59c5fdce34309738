import type { CardRow } from '../../../core/card/card-row.ts';
import { levelText, pacesText, shutterText } from '../../../core/card/card-words.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { frameOfRow, goingLimits } from '../../../core/card/going-limits.ts';
import { movedStand } from '../../../core/card/moved-stand.ts';
import type { Going, Verdict } from '../../../core/card/stop-rule-steps.ts';
import { heightWords, levelWords, secondsWords, troubleWords, verdictWords } from './run-words.ts';

/** Why a count can’t be halved or doubled: "16 s don’t fit in the 10 s shutter". */
const whyNotCount = (card: FieldCard, row: CardRow, { seconds }: Going, verdict: Verdict): string => {
  if (row.staysOn) return 'this lamp is on all the time';
  if (verdict === 'too-bright') return `${secondsWords(seconds / 2)} is too short to count`;
  const shutter = shutterText(frameOfRow(card, row));
  const others = card.rows.some((each) => each !== row && each.frameId === row.frameId && !each.staysOn);
  const withWhat = others ? ' with the other passes' : row.onSeconds > 0 ? ` after ${secondsWords(row.onSeconds)}` : '';
  return `${secondsWords(seconds * 2)} don’t fit in the ${shutter} s shutter${withWhat}`;
};

/** What else helps where count and place are at their ends. */
const elseWords = (row: CardRow, verdict: Verdict): string => {
  if (verdict === 'too-bright')
    return 'put more cloth before the lamp, or, for the whole frame, lower the ISO or close the aperture';
  const things = [
    ...(row.levelPercent < 100 ? ['turn the lamp up'] : []),
    ...(row.gelWord.includes('cloth') ? ['take the cloth off'] : []),
  ];
  return `${[...things, 'for the whole frame, raise the ISO or open the aperture'].join(', or ')}`;
};

/** Why the lamp is not turned down: ", and half its level is under its lowest, 20 %". */
const lowestWords = ({ lowestLevelPercent }: CardRow): string =>
  lowestLevelPercent < 100
    ? `, and half its level is under its lowest, ${levelText(lowestLevelPercent)}`
    : ', and the lamp has no lower level';

const brighterWords = (card: FieldCard, row: CardRow, before: Going, verdict: Verdict, after: Going): string => {
  if (after.seconds !== before.seconds) return `now count ${secondsWords(after.seconds)}.`;
  const why = whyNotCount(card, row, before, verdict);
  if (after.levelTimes !== before.levelTimes)
    return `${why}: turn the lamp ${verdict === 'too-bright' ? 'down' : 'up'}, to ${levelWords(row, after)}.`;
  const way = verdict === 'too-bright' ? 'farther' : 'nearer';
  const low = verdict === 'too-bright' ? lowestWords(row) : '';
  if (after.distanceTimes === before.distanceTimes)
    return `${why}${low}, and ${way} is no use: ${elseWords(row, verdict)}.`;
  const [from, to] = [before, after].map((going) => movedStand(card, row.start, going)) as [
    ReturnType<typeof movedStand>,
    ReturnType<typeof movedStand>,
  ];
  const clock = from.clock === to.clock ? '' : ` at ${to.clock}`;
  return `${why}${low}: ${verdict === 'too-bright' ? 'step back' : 'go nearer'}, to ${pacesText(to.paces)} paces${clock}.`;
};

const flatWords = (card: FieldCard, row: CardRow, before: Going, after: Going): string => {
  const stand = movedStand(card, row.start, after);
  const moves = after.hoursMoved !== before.hoursMoved;
  const lowers = after.heightTimes !== before.heightTimes;
  const hours = goingLimits(card, row, before).clockHours;
  const isBehind = hours > 9.5 || hours < 2.5;
  const there = isBehind ? 'it is a back light already' : 'farther round it would be a back light';
  const low = 'nothing is left to lower';
  if (lowers) return `lower the lamp, to ${heightWords(stand, card)}. Stay at ${stand.clock}.`;
  if (moves) return `move to ${stand.clock}. Stay as high as it is.`;
  return `${low}, and ${there}. Stay as you are.`;
};

/** What the rules make of a verdict: "Too bright: now count 4 s." */
export const changeWords = (card: FieldCard, row: CardRow, before: Going, verdict: Verdict, after: Going): string => {
  if (verdict === 'good') return 'Done.';
  if (verdict === 'not-said') return 'Noted.';
  const word = verdictWords[verdict];
  const words =
    verdict === 'flat' ? flatWords(card, row, before, after) : brighterWords(card, row, before, verdict, after);
  const isElsewhere = after.distanceTimes !== before.distanceTimes || after.hoursMoved !== before.hoursMoved;
  const trouble = isElsewhere ? troubleWords(card, row, after) : '';
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}: ${words}${trouble && ` ${trouble}`}`;
};
