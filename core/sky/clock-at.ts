import { localTimeOf } from './zoned-time.ts';

const minuteMilliseconds = 60_000;

/** Local time of an instant to the nearest minute, such as 2026-10-09T22:30; null in a zone that this machine does not know. */
export const toMinute = (milliseconds: number, timeZone: string): string | null =>
  localTimeOf(Math.round(milliseconds / minuteMilliseconds) * minuteMilliseconds, timeZone)?.slice(0, 16) ?? null;

/** "22:30" of an instant, to the nearest minute; "–" in a zone that this machine does not know. */
export const clockAt = (milliseconds: number, timeZone: string): string =>
  toMinute(milliseconds, timeZone)?.slice(11) ?? '–';
