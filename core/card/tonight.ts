import type { Night, NightRun } from '../setup/schema/setup.ts';
import type { CardRow } from './card-row.ts';
import type { FieldCard } from './field-card.ts';
import { frameOfRow, goingLimits } from './going-limits.ts';
import { afterVerdict, type Going } from './stop-rule-steps.ts';

const planned = (row: CardRow): Going => ({
  seconds: row.countSeconds,
  distanceTimes: 1,
  hoursMoved: 0,
  heightTimes: 1,
  levelTimes: 1,
});

/** How a row is to be gone next: as it went last, changed by what was said of that; as planned where it has not been gone. */
export const goingOf = (card: FieldCard, row: CardRow, night: Night | null): Going => {
  const last = night?.runs.findLast(({ frameId, passId }) => frameId === row.frameId && passId === row.passId);
  return last ? afterVerdict(last, last.verdict, goingLimits(card, row, last)) : planned(row);
};

/** A pass as it was gone, for the log. `at` is the clock there, as 2026-10-09T22:30:00. */
export const runOf = (
  card: FieldCard,
  row: CardRow,
  going: Going,
  verdict: NightRun['verdict'],
  at: string,
): NightRun => ({
  at,
  frameId: row.frameId,
  frameName: frameOfRow(card, row).name,
  passId: row.passId,
  passName: row.name,
  seconds: going.seconds,
  strokes: row.strokes,
  distanceTimes: going.distanceTimes,
  hoursMoved: going.hoursMoved,
  heightTimes: going.heightTimes,
  levelTimes: going.levelTimes,
  verdict,
});
