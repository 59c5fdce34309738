import { MakeTime, MoonPhase, SearchMoonPhase } from 'astronomy-engine';

/** The four phases of a day, and the four stretches between them. */
export const moonPhaseNames = [
  'new moon',
  'waxing crescent',
  'first quarter',
  'waxing gibbous',
  'full moon',
  'waning gibbous',
  'last quarter',
  'waning crescent',
] as const;
export type MoonPhaseName = (typeof moonPhaseNames)[number];

const dayMilliseconds = 86_400_000;
/** Longer than any month from new moon to new moon (at most 29.84 days). */
const searchDays = 31;

/** How far the moon is ahead of the sun along the ecliptic as seen from the middle of the earth, degrees, 0 to 360. */
const aheadDegrees = (milliseconds: number): number => MoonPhase(new Date(milliseconds));

/**
 * Name of the phase of a stretch of about a day: a phase of a day (new, quarters, full) where its instant is in the
 * stretch, as almanacs give it; else what lies between.
 */
export const moonPhaseName = (startMilliseconds: number, endMilliseconds: number): MoonPhaseName => {
  const start = aheadDegrees(startMilliseconds) / 90;
  const end = start + ((((aheadDegrees(endMilliseconds) / 90 - start) % 4) + 4) % 4);
  const place = Math.floor(end) > Math.floor(start) ? 2 * Math.floor(end) : 2 * Math.floor(start) + 1;
  return moonPhaseNames[place % 8] as MoonPhaseName;
};

/** Days since the last new moon, 0 to 29.84; null should the search fail, which no month between 1600 and 2500 makes it. */
export const moonAgeDays = (milliseconds: number): number | null => {
  const last = SearchMoonPhase(0, MakeTime(new Date(milliseconds)), -searchDays);
  return last === null ? null : (milliseconds - last.date.getTime()) / dayMilliseconds;
};
