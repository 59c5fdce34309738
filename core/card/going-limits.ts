import { radiansFromDegrees } from '../units/angle.ts';
import { clockHoursFromTurn } from '../units/clock.ts';
import type { CardRow, CardStand } from './card-row.ts';
import type { CardFrame, FieldCard } from './field-card.ts';
import { movedStand } from './moved-stand.ts';
import type { Going, GoingLimits } from './stop-rule-steps.ts';

/** Nearer to what it lights than this a lamp is in the way, metres; and no nearer or farther than so many times the plan. Common practice, no published source. */
const leastMetres = 1;
const [leastTimes, mostTimes] = [1 / 3, 3] as const;

/** How near a lamp may go to its aim, as a multiple of the plan. One that is planned nearer than allowed may stay there. */
const nearestTimes = ({ place, aim, riseMetres }: CardStand): number => {
  const levelMetres = Math.hypot(place[0] - aim[0], place[1] - aim[1]);
  const metres = Math.hypot(levelMetres, riseMetres);
  // not right under what is lit, however high up that is
  const steepest = Math.hypot(Math.min(levelMetres, leastMetres), riseMetres);
  return Math.min(1, Math.max(leastTimes, leastMetres / metres, steepest / metres));
};

/** The frame of a row of the card. Like frames stand together there under the number of their first. */
export const frameOfRow = (card: FieldCard, row: CardRow): CardFrame =>
  card.frames.find(({ rowNumbers }) => rowNumbers.includes(row.number)) as CardFrame;

/** Seconds that a frame needs after a pass for those that are gone on foot after it, as planned. */
const secondsAfter = ({ rows }: FieldCard, row: CardRow): number => {
  const off = row.onSeconds + row.countSeconds;
  const later = rows.filter(
    (each) => each.frameId === row.frameId && each.isHeld && row.isHeld && each.onSeconds > row.onSeconds,
  );
  return Math.max(0, ...later.map(({ onSeconds, countSeconds }) => onSeconds + countSeconds - off));
};

/** What the stop rules keep to for a row that was gone in a certain way. */
export const goingLimits = (card: FieldCard, row: CardRow, going: Going): GoingLimits => ({
  mostSeconds: frameOfRow(card, row).seconds - row.onSeconds - secondsAfter(card, row),
  staysOn: row.staysOn,
  clockHours: clockHoursFromTurn(radiansFromDegrees(movedStand(card, row.start, going).roundDegrees)),
  heightMetres: row.start.heightMetres,
  // at least what the file of a night takes
  leastLevelTimes: row.levelPercent > 0 ? Math.min(1, Math.max(row.lowestLevelPercent / row.levelPercent, 1e-4)) : 1,
  leastTimes: Math.max(nearestTimes(row.start), row.end ? nearestTimes(row.end) : 0),
  mostTimes,
});
