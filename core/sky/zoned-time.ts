import { offsetText, zoneOffset } from './zone-offset.ts';

/** What the clocks of the place say about a local time. */
export type ClockNote =
  /** The time comes once. */
  | 'once'
  /** Clocks jump over it: the instant is as far after the jump as the time is past it. */
  | 'skipped'
  /** Clocks are put back and it comes twice: the instant is the first of the two. */
  | 'twice';

/** Instant of a local time, or why there is none. */
export type ZonedInstant =
  | {
      readonly kind: 'instant';
      readonly utcMilliseconds: number;
      readonly offsetMilliseconds: number;
      /** "UTC+10:00". */
      readonly offset: string;
      readonly note: ClockNote;
    }
  | { readonly kind: 'unknown-zone'; readonly timeZone: string }
  | { readonly kind: 'no-time'; readonly localTime: string };

const dayMilliseconds = 86_400_000;
const localPattern = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/;

/** The wall clock's numbers read as if they were UTC; null for 30 February, for 25 o'clock and for other text. */
const wallMilliseconds = (localTime: string): number | null => {
  if (!localPattern.test(localTime)) return null;
  const wall = new Date(`${localTime}Z`);
  return Number.isFinite(wall.getTime()) && wall.toISOString().startsWith(localTime) ? wall.getTime() : null;
};

/**
 * The instant of a local time in a zone. The offsets of the day before and of the day after are the only ones that the
 * time can have, as no zone changes its clocks twice in two days; each that gives the same local time back is right.
 *
 * @param localTime such as 2026-10-09T22:30 or 2026-10-09T22:30:15
 * @param timeZone IANA name
 */
export const instantOf = (localTime: string, timeZone: string): ZonedInstant => {
  const wall = wallMilliseconds(localTime);
  if (wall === null) return { kind: 'no-time', localTime };
  const before = zoneOffset(timeZone, wall - dayMilliseconds);
  const after = zoneOffset(timeZone, wall + dayMilliseconds);
  if (before === null || after === null) return { kind: 'unknown-zone', timeZone };
  const candidates = [...new Set([before, after])]
    .filter((offset) => zoneOffset(timeZone, wall - offset) === offset)
    .map((offset) => wall - offset);
  const first = candidates.length > 0 ? Math.min(...candidates) : wall - before;
  const offsetMilliseconds = zoneOffset(timeZone, first) as number;
  return {
    kind: 'instant',
    utcMilliseconds: first,
    offsetMilliseconds,
    offset: offsetText(offsetMilliseconds),
    note: candidates.length === 0 ? 'skipped' : candidates.length === 1 ? 'once' : 'twice',
  };
};

/**
 * Local time of an instant, to the second, as the setup keeps it: 2026-10-09T22:30, with seconds only where there are any.
 * Null for a zone that this machine does not know. Years 1 to 9999.
 */
export const localTimeOf = (utcMilliseconds: number, timeZone: string): string | null => {
  const offset = zoneOffset(timeZone, utcMilliseconds);
  if (offset === null) return null;
  const text = new Date(Math.floor(utcMilliseconds / 1000) * 1000 + offset).toISOString().slice(0, 19);
  return text.endsWith(':00') ? text.slice(0, 16) : text;
};
