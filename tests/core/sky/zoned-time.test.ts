import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { offsetText, zoneOffset } from '../../../core/sky/zone-offset.ts';
import { instantOf, localTimeOf } from '../../../core/sky/zoned-time.ts';

/** What the IANA rules give, as told by the clocks of these places; the tests run on the zones of Node. */
const rows = [
  ['Australia/Sydney', '2026-08-11T20:30', '2026-08-11T10:30:00Z', 'UTC+10:00', 'once'],
  ['Australia/Sydney', '2026-10-04T02:30', '2026-10-03T16:30:00Z', 'UTC+11:00', 'skipped'],
  ['Australia/Sydney', '2026-04-05T02:30', '2026-04-04T15:30:00Z', 'UTC+11:00', 'twice'],
  ['Europe/London', '2026-10-25T01:30', '2026-10-25T00:30:00Z', 'UTC+01:00', 'twice'],
  ['Europe/London', '2026-03-29T01:30', '2026-03-29T01:30:00Z', 'UTC+01:00', 'skipped'],
  ['America/St_Johns', '2026-07-01T12:00', '2026-07-01T14:30:00Z', 'UTC−02:30', 'once'],
  ['Asia/Kathmandu', '2026-01-01T05:45', '2026-01-01T00:00:00Z', 'UTC+05:45', 'once'],
  ['Pacific/Chatham', '2026-01-10T12:45', '2026-01-09T23:00:00Z', 'UTC+13:45', 'once'],
  // Half an hour of summer time only.
  ['Australia/Lord_Howe', '2026-10-04T02:15', '2026-10-03T15:45:00Z', 'UTC+11:00', 'skipped'],
  ['Australia/Lord_Howe', '2026-04-05T01:45', '2026-04-04T14:45:00Z', 'UTC+11:00', 'twice'],
  // A whole day that was left out: 30 December 2011.
  ['Pacific/Apia', '2011-12-30T12:00', '2011-12-30T22:00:00Z', 'UTC+14:00', 'skipped'],
  ['Etc/UTC', '2026-10-09T22:30:15', '2026-10-09T22:30:15Z', 'UTC+00:00', 'once'],
] as const;

describe('instantOf', () => {
  it.each(rows)('%s %s is %s, %s, %s', (timeZone, localTime, instant, offset, note) => {
    const utcMilliseconds = Date.parse(instant);
    expect(instantOf(localTime, timeZone)).toMatchObject({ kind: 'instant', utcMilliseconds, offset, note });
    if (note !== 'skipped') expect(localTimeOf(utcMilliseconds, timeZone)).toBe(localTime);
    expect(offsetText(zoneOffset(timeZone, utcMilliseconds) ?? Number.NaN)).toBe(offset);
  });

  it('goes there and back at every instant that comes once, in zones of all kinds', () => {
    const zones = [
      'Australia/Lord_Howe',
      'America/New_York',
      'Asia/Tehran',
      'Pacific/Kiritimati',
      'Africa/Casablanca',
      'Etc/UTC',
    ];
    const seconds = fc.integer({ min: Date.UTC(1990, 0, 1) / 1000, max: Date.UTC(2035, 0, 1) / 1000 });
    fc.assert(
      fc.property(fc.constantFrom(...zones), seconds, (zone, second) => {
        const local = localTimeOf(second * 1000, zone);
        const back = instantOf(local ?? '', zone);
        if (back.kind !== 'instant') throw new Error(`${local} in ${zone}: ${back.kind}`);
        expect(back.note).not.toBe('skipped');
        if (back.note === 'once') expect(back.utcMilliseconds).toBe(second * 1000);
        else expect(localTimeOf(back.utcMilliseconds, zone)).toBe(local);
      }),
      { numRuns: 300, seed: 12 },
    );
  });

  it.each(['2026-02-30T12:00', '2026-10-09T25:00', '2026-10-09', '2026-10-09 22:30', '2026-10-09T22:30Z', ''])(
    'finds no time in "%s"',
    (localTime) => {
      expect(instantOf(localTime, 'Etc/UTC')).toEqual({ kind: 'no-time', localTime });
    },
  );

  it.each(['Nowhere/At_All', '', 'Mars'])('does not know the zone "%s", and throws nothing', (timeZone) => {
    expect(instantOf('2026-10-09T22:30', timeZone)).toEqual({ kind: 'unknown-zone', timeZone });
    expect(localTimeOf(0, timeZone)).toBeNull();
    expect(zoneOffset(timeZone, 0)).toBeNull();
  });

  it('counts over the turn of the era: in year 1 the clocks of New York still showed 1 BC (local mean time, −4:56:02)', () => {
    const yearOne = new Date(0);
    yearOne.setUTCFullYear(1, 0, 1);
    yearOne.setUTCHours(0, 0, 0);
    expect(zoneOffset('America/New_York', yearOne.getTime())).toBe(-(4 * 3600 + 56 * 60 + 2) * 1000);
    expect(zoneOffset('Etc/UTC', yearOne.getTime() - 1000)).toBe(0);
  });

  it('has no offset for an instant that is no date', () => {
    expect(zoneOffset('Etc/UTC', Number.NaN)).toBeNull();
    expect(zoneOffset('Etc/UTC', 1e17)).toBeNull();
  });
});

describe('offsetText', () => {
  it('writes hours and minutes with a true minus sign', () => {
    expect([36e6, -9e6, 0, -1000, 45900e3].map(offsetText)).toEqual([
      'UTC+10:00',
      'UTC−02:30',
      'UTC+00:00',
      'UTC+00:00',
      'UTC+12:45',
    ]);
  });
});
