import { isKnownZone } from '../../../core/sky/zone-offset.ts';
import type { Parsed } from '../ui/ParsedField.tsx';

/** What the document takes. */
const zonePattern = /^[A-Za-z][A-Za-z0-9_+/-]{0,63}$/;

/** Whole hours ahead of UTC have names of their own, with the sign the other way round. */
const zoneOfHours = (hours: number): string =>
  hours === 0 ? 'Etc/UTC' : `Etc/GMT${hours > 0 ? '-' : '+'}${Math.abs(hours)}`;

/** A zone by its name in any letters, "Australia/Sydney", or whole hours as "UTC+10". */
export const parseZone = (typed: string): Parsed<string> => {
  const text = typed.trim().replace(/ /g, '_').replace(/−/g, '-');
  const hours = /^(?:utc|gmt)(?:([+-]\d{1,2})(?::?00)?)?$/i.exec(text);
  if (hours) {
    const value = Number(hours[1] ?? 0);
    return value >= -12 && value <= 14
      ? { value: zoneOfHours(value) }
      : { problem: 'Zones run from UTC−12 to UTC+14.' };
  }
  if (!zonePattern.test(text) || !isKnownZone(text))
    return { problem: 'Type a zone such as Australia/Sydney, or UTC+10.' };
  // the browser's own spelling of it, where it is the same name in other letters
  const own = new Intl.DateTimeFormat('en', { timeZone: text }).resolvedOptions().timeZone;
  return { value: own.toLowerCase() === text.toLowerCase() ? own : text };
};
