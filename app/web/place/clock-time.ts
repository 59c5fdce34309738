import { toMinute } from '../../../core/sky/clock-at.ts';
import { instantOf } from '../../../core/sky/zoned-time.ts';

const minuteMilliseconds = 60_000;

const utcDay = (date: string): Date => new Date(`${date}T00:00Z`);

// written out: browsers do not agree on the short forms
const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** "Fri" of a local time or date. */
export const weekday = (localTime: string): string =>
  weekdays[utcDay(localTime.slice(0, 10)).getUTCDay()] ?? weekdays[0];

/** "9 Oct" of a local time or date. */
export const shortDate = (localTime: string): string => {
  const date = utcDay(localTime.slice(0, 10));
  return `${date.getUTCDate()} ${months[date.getUTCMonth()] ?? ''}`;
};

/** "Fri 9 Oct 2026" of a local time or date. */
export const dateWords = (localTime: string): string =>
  `${weekday(localTime)} ${shortDate(localTime)} ${localTime.slice(0, 4)}`;

/** The same time of the clock some days on. Null beyond the years that the document takes. */
export const daysOn = (localTime: string, days: number): string | null => {
  const date = utcDay(localTime.slice(0, 10));
  date.setUTCDate(date.getUTCDate() + days);
  const year = date.getUTCFullYear();
  return year >= 1 && year <= 9999 ? `${date.toISOString().slice(0, 10)}${localTime.slice(10)}` : null;
};

/**
 * The local time some minutes on by the sun, not by the clock. An hour that the clock shows twice is told once, by its
 * first run: the second run is stepped over, so that a key held down never turns back.
 */
export const minutesOn = (localTime: string, timeZone: string, minutes: number): string | null => {
  const now = instantOf(localTime, timeZone);
  if (now.kind !== 'instant') return null;
  const way = Math.sign(minutes) * 30 * minuteMilliseconds;
  let target = now.utcMilliseconds + minutes * minuteMilliseconds;
  for (let hop = 0; hop < 5; hop++) {
    const local = toMinute(target, timeZone);
    if (local === null) return null;
    const told = instantOf(local, timeZone);
    if (told.kind === 'instant' && (told.utcMilliseconds - now.utcMilliseconds) * Math.sign(minutes) > 0) return local;
    target += way;
  }
  return null;
};

/**
 * A time typed while a night is on show: it is meant in that night, from noon to noon, so that 00:30 after 23:50 is half an
 * hour past midnight and not a day before.
 */
export const timeInNight = (localTime: string, time: string): string | null => {
  const isMorning = (clock: string) => clock < '12:00';
  const days = Number(isMorning(time)) - Number(isMorning(localTime.slice(11, 16)));
  const day = daysOn(localTime, days);
  return day && `${day.slice(0, 10)}T${time}`;
};
