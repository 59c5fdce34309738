import { stopsFromRatio } from '../units/stops.ts';
import { levelForCount, type PassLight, secondsForLevel, spokenCount } from './count.ts';

/** How a lamp is set for a pass. */
export interface LampSetting {
  readonly levelPercent: number;
  /** Neutral density that hangs in front of it, stops, in halves. */
  readonly ndStops: number;
  /** Count, or how long it stays lit. */
  readonly seconds: number;
}

/** What a lamp can do. */
export interface LampRange {
  readonly lowestLevelPercent: number;
  /** Most neutral density that can hang in front of it, stops. */
  readonly mostNdStops: number;
}

/** Counts that are easy to keep: no shorter, no longer. Common practice, no published source. */
const easySeconds = [3, 30] as const;
/** Counts for which a level is chosen where the present one gives no easy count. */
const [shortCount, longCount] = [5, 10] as const;

/** Level to three figures: nobody sets it finer. */
const settable = (percent: number): number => Number(percent.toPrecision(3));

/** Level and density that leave so much of the full lamp, as near as the lamp can. */
const dimmed = (
  percent: number,
  { lowestLevelPercent, mostNdStops: most }: LampRange,
): Omit<LampSetting, 'seconds'> => {
  const lowest = Math.max(lowestLevelPercent, 1e-6);
  if (percent >= lowest) return { levelPercent: settable(Math.min(percent, 100)), ndStops: 0 };
  const halves = (stops: number, round: (v: number) => number) => Math.min(Math.max(round(2 * stops) / 2, 0), most);
  let ndStops = halves(stopsFromRatio(lowest / percent), Math.ceil);
  // a lamp that can't be dimmed has its density alone: the nearest half stop
  if (percent * 2 ** ndStops > 100) ndStops = halves(stopsFromRatio(100 / percent), Math.round);
  return { levelPercent: settable(Math.min(Math.max(percent * 2 ** ndStops, lowest), 100)), ndStops };
};

/**
 * Sets a lamp that stays lit for the whole shutter, so that its target comes to a level.
 *
 * @param full what the pass gives at full level without density
 * @param shutterSeconds the shutter's real time
 */
export const standingSetting = (
  full: PassLight,
  wantedStops: number,
  shutterSeconds: number,
  range: LampRange,
): LampSetting => ({
  ...dimmed(levelForCount(full, wantedStops, shutterSeconds), range),
  seconds: shutterSeconds,
});

/** What a count is chosen within. */
export interface CountRoom {
  /** Level that the lamp has now: kept where it gives an easy count. */
  readonly presentPercent: number;
  /** Longest count that the frame holds. */
  readonly mostSeconds: number;
  /** Longest that is easy: shared with other passes and the walks between, perhaps. */
  readonly easyMostSeconds: number;
  /** How long a walked stroke takes: its count is that, and its level follows. null for one that is counted on the spot. */
  readonly strokeSeconds: number | null;
}

/**
 * Sets a lamp that is counted, so that its target comes to a level: its present level where that gives an easy count, else
 * another, which makes the count exact where the lamp can; density only under its lowest level. Counts are those that can
 * be spoken.
 *
 * @param full what the pass gives at full level without density
 */
export const countedSetting = (
  full: PassLight,
  wantedStops: number,
  { presentPercent, mostSeconds, easyMostSeconds, strokeSeconds }: CountRoom,
  range: LampRange,
): LampSetting => {
  const atFull = secondsForLevel(full, wantedStops);
  if (strokeSeconds !== null) {
    const seconds = Math.min(strokeSeconds, mostSeconds);
    return { ...dimmed((100 * atFull) / seconds, range), seconds };
  }
  const easyMost = Math.min(easyMostSeconds, easySeconds[1], mostSeconds);
  const easyLeast = Math.min(easySeconds[0], easyMost);
  const atPresent = (100 * atFull) / presentPercent;
  const isKept = presentPercent > 0 && atPresent >= easyLeast * 0.9 && atPresent <= easyMost * 1.1;
  const wish = Math.min(atPresent < easyLeast ? shortCount : longCount, easyMost);
  const { levelPercent, ndStops } = isKept
    ? { levelPercent: presentPercent, ndStops: 0 }
    : dimmed((100 * atFull) / wish, range);
  const seconds = (100 * atFull * 2 ** ndStops) / levelPercent;
  const count = seconds > mostSeconds ? mostSeconds : (spokenCount(seconds, mostSeconds) ?? mostSeconds);
  const exact = settable((levelPercent * seconds) / count);
  const isSettable = !isKept && exact >= range.lowestLevelPercent && exact <= 100;
  return { levelPercent: isSettable ? exact : levelPercent, ndStops, seconds: count };
};
