import { apertureText, countText, lengthText, pacesText, shutterText } from '../../../core/card/card-words.ts';
import type { CardFrame, CardRow, FieldCard } from '../../../core/card/field-card.ts';
import type { Going, Verdict } from '../../../core/card/stop-rule-steps.ts';
import { frameOfRow, movedStand } from '../../../core/card/tonight.ts';

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

/** "12 s · f/2 · ISO 5000 · focus 4.2 m": what the camera is set to. */
export const exposureWords = ({ lengths }: FieldCard, frame: CardFrame): string =>
  `${shutterText(frame)} s · f/${apertureText(frame)} · ISO ${Math.round(frame.iso)} · focus ${frame.focusMetres === null ? 'infinity' : lengthText(frame.focusMetres, lengths)}`;

/** What to do for frames without a lamp. */
export const unlitWords = ({ count, gapSeconds }: CardFrame): string =>
  count > 1
    ? `Open the shutter ${count} times${gapSeconds ? `, ${secondsWords(gapSeconds)} apart` : ''}. Keep all lamps off.`
    : 'Open the shutter. Keep all lamps off.';

/** "Frame 2 of 3 · Painted", and what the camera is set to for it. */
export const frameWords = (card: FieldCard, row: CardRow): readonly [string, string] => {
  const frame = frameOfRow(card, row);
  return frame ? [frameTitle(card, frame), `shutter ${exposureWords(card, frame)}`] : [`Frame ${row.frameNumber}`, ''];
};

/** Where to stand: "2:30 · 8 paces (6.0 m) · knee". */
export const standWords = (card: FieldCard, row: CardRow, going: Going): string => {
  const words = (stand: CardRow['start']) => {
    const { clock, paces, distanceMetres, heightWord } = movedStand(stand, going, card.paceMetres);
    return `${clock} · ${pacesText(paces)} paces (${lengthText(distanceMetres, card.lengths)}) · ${heightWord}`;
  };
  return row.end ? `${words(row.start)}, to ${words(row.end)}` : words(row.start);
};

/** What the rules make of a verdict: "Too bright: now 4 s." */
export const changeWords = (card: FieldCard, row: CardRow, before: Going, verdict: Verdict, after: Going): string => {
  if (verdict === 'good') return 'Done.';
  if (verdict === 'not-said') return 'Noted.';
  const word = verdictWords[verdict];
  const start = `${word.charAt(0).toUpperCase()}${word.slice(1)}: `;
  if (after.seconds !== before.seconds) return `${start}now count ${secondsWords(after.seconds)}.`;
  const { clock, paces, heightWord } = movedStand(row.start, after, card.paceMetres);
  if (after.distanceTimes > before.distanceTimes) return `${start}step back, to ${pacesText(paces)} paces.`;
  if (after.distanceTimes < before.distanceTimes) return `${start}go nearer, to ${pacesText(paces)} paces.`;
  return `${start}lower the lamp, to ${heightWord}; move to ${clock}.`;
};
