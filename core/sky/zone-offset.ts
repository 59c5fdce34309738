/** One formatter for a zone: making one costs a hundred times what using it does. Null = a zone that this machine does not know. */
const formatters = new Map<string, Intl.DateTimeFormat | null>();

const makeFormatter = (timeZone: string): Intl.DateTimeFormat | null => {
  try {
    return new Intl.DateTimeFormat('en-US-u-ca-gregory-nu-latn', {
      timeZone,
      hourCycle: 'h23',
      era: 'short',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
  } catch {
    return null;
  }
};

const formatterOf = (timeZone: string): Intl.DateTimeFormat | null => {
  const kept = formatters.get(timeZone);
  if (kept !== undefined) return kept;
  const made = makeFormatter(timeZone);
  formatters.set(timeZone, made);
  return made;
};

/** Whether this machine knows the zone, which it does for every IANA name of its age. */
export const isKnownZone = (timeZone: string): boolean => formatterOf(timeZone) !== null;

/**
 * How far the clocks of a zone are ahead of UTC at an instant, milliseconds; west of Greenwich negative.
 *
 * @param utcMilliseconds from the year 1 to 9999
 * @returns null for a zone that this machine does not know, and for an instant that is no date
 */
export const zoneOffset = (timeZone: string, utcMilliseconds: number): number | null => {
  const formatter = formatterOf(timeZone);
  if (!formatter || !Number.isFinite(new Date(utcMilliseconds).getTime())) return null;
  const parts = new Map(formatter.formatToParts(utcMilliseconds).map(({ type, value }) => [type, value]));
  const part = (name: Intl.DateTimeFormatPartTypes) => Number(parts.get(name));
  const year = parts.get('era') === 'BC' ? 1 - part('year') : part('year');
  const wall = new Date(0);
  wall.setUTCFullYear(year, part('month') - 1, part('day'));
  wall.setUTCHours(part('hour'), part('minute'), part('second'));
  return wall.getTime() - Math.floor(utcMilliseconds / 1000) * 1000;
};

/** "UTC+10:00", "UTC−03:30", "UTC+00:00"; seconds of old local times are rounded away. */
export const offsetText = (offsetMilliseconds: number): string => {
  const minutes = Math.round(Math.abs(offsetMilliseconds) / 60_000);
  const two = (value: number) => String(value).padStart(2, '0');
  const sign = offsetMilliseconds < 0 && minutes > 0 ? '−' : '+';
  return `UTC${sign}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
};
