import { describe, expect, it } from 'vitest';
import { dateWords, daysOn, minutesOn, timeInNight } from '../../../../app/web/place/clock-time.ts';
import { parseDate, parseTime } from '../../../../app/web/place/parse-when.ts';
import { parseZone } from '../../../../app/web/place/parse-zone.ts';
import { clockAt } from '../../../../core/sky/clock-at.ts';
import { instantOf } from '../../../../core/sky/zoned-time.ts';

const value = (parsed: object): unknown => ('value' in parsed ? parsed.value : null);

describe('typed dates and times', () => {
  it('dates: ISO, and a day with the month in letters; not 9/10, which is two days', () => {
    const dates = ['2026-10-09', '2026-1-9', '9 Oct 2026', '9 october', 'Fri, 9 Oct 2026', '9. Oct'];
    expect(dates.map((text) => value(parseDate(text, 2026)))).toEqual([
      '2026-10-09',
      '2026-01-09',
      '2026-10-09',
      '2026-10-09',
      '2026-10-09',
      '2026-10-09',
    ]);
    for (const text of ['9/10/2026', '9.10.2026', '30 Feb 2026', '2026-02-29', '', 'soon', '1 Jan 3000'])
      expect(parseDate(text, 2026)).toHaveProperty('problem');
  });

  it('times: with and without a sign between, and by halves of the day', () => {
    const times = ['22:30', '2230', '22.30', '7:05', '10:30 pm', '12:10 am', '12 pm', '9pm', '0:00'];
    expect(times.map((text) => value(parseTime(text)))).toEqual([
      '22:30',
      '22:30',
      '22:30',
      '07:05',
      '22:30',
      '00:10',
      '12:00',
      '21:00',
      '00:00',
    ]);
    for (const text of ['24:00', '20:90', '13 pm', '', 'noon']) expect(parseTime(text)).toHaveProperty('problem');
  });

  it('zones: by name in any letters, and whole hours, whose names in the database have the other sign', () => {
    const zones = ['australia/sydney', 'Australia/Lord Howe', 'UTC', 'utc+10', 'UTC−3', 'GMT+14'];
    expect(zones.map((text) => value(parseZone(text)))).toEqual([
      'Australia/Sydney',
      'Australia/Lord_Howe',
      'Etc/UTC',
      'Etc/GMT-10',
      'Etc/GMT+3',
      'Etc/GMT-14',
    ]);
    // ten hours ahead of UTC
    expect(instantOf('2026-01-01T10:00', 'Etc/GMT-10')).toMatchObject({ utcMilliseconds: Date.UTC(2026, 0, 1) });
    for (const text of ['Mars/Olympus', 'UTC+15', 'UTC-13', '', '<b>'])
      expect(parseZone(text)).toHaveProperty('problem');
  });
});

describe('the clock of the place', () => {
  it('goes over the end of a month and of February in a leap year', () => {
    expect(daysOn('2026-10-31T22:30', 1)).toBe('2026-11-01T22:30');
    expect(daysOn('2028-02-29T01:00', -1)).toBe('2028-02-28T01:00');
    expect(daysOn('2028-02-28T01:00', 1)).toBe('2028-02-29T01:00');
    expect(dateWords('2026-10-09T22:30')).toBe('Fri 9 Oct 2026');
  });

  it('tells an instant to the nearest minute in the zone', () => {
    expect(clockAt(Date.UTC(2026, 7, 11, 10, 29, 40), 'Australia/Sydney')).toBe('20:30');
    expect(clockAt(0, 'No/Where')).toBe('–');
  });

  it('jumps with the clocks in spring: 01:59 and a minute is 03:00 (Europe, last Sunday of March)', () => {
    expect(minutesOn('2026-03-29T01:59', 'Europe/Berlin', 1)).toBe('2026-03-29T03:00');
    expect(minutesOn('2026-03-29T03:00', 'Europe/Berlin', -1)).toBe('2026-03-29T01:59');
  });

  it('never turns back in the hour that comes twice: a key held down goes through it, both ways', () => {
    for (const [zone, start, end] of [
      ['Europe/Berlin', '2026-10-25T01:50', '2026-10-25T03:10'],
      // half an hour is put back
      ['Australia/Lord_Howe', '2026-04-05T01:20', '2026-04-05T02:40'],
    ] as const) {
      let forth: string | null = start;
      for (let n = 0; n < 300 && forth !== null && forth < end; n++) forth = minutesOn(forth, zone, 1);
      expect(forth).toBe(end);
      let back: string | null = end;
      for (let n = 0; n < 300 && back !== null && back > start; n++) back = minutesOn(back, zone, -1);
      expect(back).toBe(start);
    }
  });
});

describe('timeInNight', () => {
  it.each([
    ['2026-10-09T23:50', '00:30', '2026-10-10T00:30'],
    ['2026-10-10T00:30', '23:50', '2026-10-09T23:50'],
    ['2026-10-09T22:10', '21:00', '2026-10-09T21:00'],
    ['2026-12-31T20:00', '03:15', '2027-01-01T03:15'],
  ])('after %s, a typed %s is meant in the same night: %s', (localTime, time, expected) => {
    expect(timeInNight(localTime, time)).toBe(expected);
  });
});
