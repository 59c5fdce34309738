import { describe, expect, it } from 'vitest';
import { hourPlace } from '../support/hours.ts';
import { reportOf, toldOf } from '../support/sky-night.ts';

describe('zone-unknown and clock-change', () => {
  // Sydney, 2026: 02:30 on 4 October does not come, on 5 April it comes twice (IANA time zone data)
  it.each([
    ['2026-10-04T02:30', 'skip it'],
    ['2026-04-05T02:30', 'show it twice'],
  ])('%s: told that the clocks %s; an hour and a half later nothing', (localTime, words) => {
    const caution = toldOf(reportOf({ place: hourPlace(localTime) }), 'clock-change');
    expect(caution).toMatchObject({ severity: 'note', frameId: 'frame-0' });
    expect(caution?.message).toContain(words);
    expect(toldOf(reportOf({ place: hourPlace(localTime.replace('02:30', '04:00')) }), 'clock-change')).toBeUndefined();
  });

  it('tells of a zone that no machine knows, and not under a plain sky', () => {
    const place = hourPlace('2026-08-11T20:30', { timeZone: 'Nowhere/None' });
    const report = reportOf({ place });
    expect(toldOf(report, 'zone-unknown')?.message).toMatch(/not drawn: the time zone “Nowhere\/None” is unknown/);
    expect(report.sky).toBeNull();
    expect(toldOf(reportOf({ place: { ...place, sky: null } }), 'zone-unknown')).toBeUndefined();
    expect(toldOf(reportOf({ place: hourPlace('2026-08-11T20:30') }), 'zone-unknown')).toBeUndefined();
  });
});
