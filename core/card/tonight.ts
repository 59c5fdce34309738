import type { Setup } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { bodyHeightWord } from '../units/body-height.ts';
import { clockHoursFromTurn, clockText } from '../units/clock.ts';
import type { CardFrame, CardRow, CardStand, FieldCard } from './field-card.ts';
import { afterVerdict, type Going, type GoingLimits, movedHours } from './stop-rule-steps.ts';

export type Night = Setup['nights'][number];
export type Run = Night['runs'][number];

const planned = (row: CardRow): Going => ({
  seconds: row.countSeconds,
  distanceTimes: 1,
  hoursMoved: 0,
  heightTimes: 1,
});

/** The frame of a row. Like frames stand together on the card under the number of their first. */
export const frameOfRow = (card: FieldCard, row: CardRow): CardFrame | undefined =>
  card.frames.find(({ rowNumbers }) => rowNumbers.includes(row.number));

const limitsOf = (card: FieldCard, row: CardRow): GoingLimits => ({
  mostSeconds: (frameOfRow(card, row)?.seconds ?? Number.POSITIVE_INFINITY) - row.onSeconds,
  staysOn: row.staysOn,
  clockHours: clockHoursFromTurn(radiansFromDegrees(row.start.roundDegrees)),
});

/** How a row is to be gone next: as it went last, changed by what was said of that; as planned where it has not been gone. */
export const goingOf = (card: FieldCard, row: CardRow, night: Night | null): Going => {
  const last = night?.runs.findLast(({ frameId, passId }) => frameId === row.frameId && passId === row.passId);
  return last ? afterVerdict(last, last.verdict, limitsOf(card, row)) : planned(row);
};

/** Where the lamp stands so: the stand of the card, moved. Counted from the mark; its place on the plan is not moved along. */
export const movedStand = (stand: CardStand, going: Going, paceMetres: number): CardStand => {
  const hours = movedHours(clockHoursFromTurn(radiansFromDegrees(stand.roundDegrees)), going.hoursMoved);
  const distanceMetres = stand.distanceMetres * going.distanceTimes;
  const heightMetres = stand.heightMetres * going.heightTimes;
  return {
    ...stand,
    clock: clockText(hours),
    distanceMetres,
    paces: distanceMetres / paceMetres,
    heightMetres,
    heightWord: bodyHeightWord(heightMetres),
  };
};

/** A pass as it was gone, for the log. `at` is the clock there, as 2026-10-09T22:30:00. */
export const runOf = (card: FieldCard, row: CardRow, going: Going, verdict: Run['verdict'], at: string): Run => ({
  at,
  frameId: row.frameId,
  frameName: frameOfRow(card, row)?.name ?? `Frame ${row.frameNumber}`,
  passId: row.passId,
  passName: row.name,
  seconds: going.seconds,
  strokes: row.strokes,
  distanceTimes: going.distanceTimes,
  hoursMoved: going.hoursMoved,
  heightTimes: going.heightTimes,
  verdict,
});
