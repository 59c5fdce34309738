import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { magneticNorth } from '../../../app/web/place/magnetic.ts';
import { accuracySection } from '../support/accuracy.ts';

const { check } = accuracySection('Compass: magnetic declination');

/** The report counts a year as 365 days in such dates. */
const instantOfYear = (year: number): number => {
  const whole = Math.floor(year);
  return Date.UTC(whole, 0, 1) + (year - whole) * 365 * 86_400_000;
};
const declination = async (
  year: number,
  heightKm: number,
  latitude: number,
  longitude: number,
): Promise<number | null> => {
  const north = await magneticNorth(latitude, longitude, instantOfYear(year), heightKm);
  return north.kind === 'declination' ? north.declinationDegrees : null;
};

describe('magneticNorth', () => {
  it.each([
    [2025, 0, 80, 0, 1.28],
    [2025, 0, 0, 120, -0.16],
    [2025, 0, -80, 240, 68.78],
    [2025, 100, 80, 0, 0.85],
    [2025, 100, 0, 120, -0.15],
    [2025, 100, -80, 240, 68.21],
    [2027.5, 0, 80, 0, 2.59],
    [2027.5, 0, 0, 120, -0.24],
    [2027.5, 0, -80, 240, 68.49],
  ])(
    'WMM2025 report, %d, %d km, latitude %d, longitude %d: %d° (0.006°)',
    async (year, height, latitude, longitude, expected) => {
      const ours = (await declination(year, height, latitude, longitude)) ?? Number.NaN;
      const source = 'NOAA and BGS, World Magnetic Model 2025, table of test values; from memory';
      const claim = `declination ${year}, ${height} km, ${latitude}, ${longitude}`;
      check({ id: 's16', claim, source, unit: '°', expected, ours, tolerance: { absolute: 0.006 } });
    },
  );

  it('NOAA test values of 2025 that the package carries in test/values.csv (0.006°): 100 rows, none is given within 2000 nT', async () => {
    const lines = readFileSync('node_modules/geomagnetism/test/values.csv', 'utf8').trim().split(/\r?\n/).slice(1);
    const rows = lines.map((line) => line.split(',').map(Number)).filter(([year = 0]) => year >= 2025);
    let [worst, compared] = [0, 0];
    for (const [year = 0, height = 0, latitude = 0, longitude = 0, , , , level = 0, , , expected = 0] of rows) {
      const ours = await declination(year, height, latitude, longitude);
      expect(ours === null, `${year} ${latitude} ${longitude}`).toBe(level < 2000);
      if (ours === null) continue;
      compared++;
      worst = Math.max(worst, Math.abs(ours - expected));
    }
    expect(rows).toHaveLength(100);
    expect(compared).toBeGreaterThan(90);
    const source = 'NOAA test values for WMM2025 as carried in geomagnetism 0.2.0, test/values.csv';
    check({
      id: 's16',
      claim: `declination: worst of ${compared}`,
      source,
      unit: '°',
      expected: 0,
      ours: worst,
      tolerance: { absolute: 0.006 },
    });
  });

  it('says which model it is and until when it holds, and warns of a weak field', async () => {
    expect(await magneticNorth(-33, 149, Date.UTC(2026, 7, 11))).toMatchObject({
      modelName: 'WMM-2025',
      isWeak: false,
    });
    expect(await magneticNorth(79, -96, Date.UTC(2026, 7, 11))).toMatchObject({ kind: 'declination', isWeak: true });
    const north = await magneticNorth(54, -2, Date.UTC(2026, 7, 11));
    const until = north.kind === 'declination' ? north.validUntilMilliseconds : Number.NaN;
    expect(await magneticNorth(54, -2, until)).toMatchObject({ kind: 'declination' });
    expect(await magneticNorth(54, -2, until + 1)).toEqual({ kind: 'none', reason: 'date' });
  });

  it('gives a reason outside its range', async () => {
    expect(await magneticNorth(54, -2, Date.UTC(1999, 0, 1))).toEqual({ kind: 'none', reason: 'date' });
    expect(await magneticNorth(54, -2, Number.NaN)).toEqual({ kind: 'none', reason: 'date' });
    expect(await magneticNorth(91, 0, Date.UTC(2026, 0, 1))).toEqual({ kind: 'none', reason: 'place' });
    expect(await magneticNorth(86, 150, Date.UTC(2026, 0, 1))).toEqual({ kind: 'none', reason: 'near-pole' });
  });
});
