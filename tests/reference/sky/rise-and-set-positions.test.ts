import julian from 'astronomia/julian';
import moonphase from 'astronomia/moonphase';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { type Night, nightRound } from '../../../core/sky/night.ts';
import { moonAgeDays } from '../../../core/sky/night-moon.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { skyInput } from '../../core/support/sky-inputs.ts';
import { accuracySection } from '../support/accuracy.ts';
import { oracleSun } from './oracle-positions.ts';

const { check } = accuracySection('Sky: rise, set, twilight and phases');
const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;

const checkTime = (id: string, claim: string, source: string, expected: number, ours: number, minutes: number) =>
  check({
    id,
    claim,
    source,
    unit: 'min',
    expected: 0,
    ours: (ours - expected) / minute,
    tolerance: { absolute: minutes },
  });

describe('moonrise and moonset', () => {
  const source = 'US Naval Observatory, one-year table of rise and set, 2050, E 150 S 45, universal time';
  it.each([
    ['2050-01-01', '03:12', '13:55'],
    ['2050-08-01', '04:57', '20:01'],
    ['2050-08-05', '10:01', '22:27'],
  ])('of %s as tabled to the minute: %s and %s (0.6 min)', (date, rise, set) => {
    const night = nightRound(skyInput(-45, 150, `${date}T12:00:00Z`));
    const [moonrise, moonset] = [night.moonrise?.utcMilliseconds, night.moonset?.utcMilliseconds];
    checkTime('s12', `moonrise of ${date}`, source, Date.parse(`${date}T${rise}Z`), moonrise ?? Number.NaN, 0.6);
    checkTime('s12', `moonset of ${date}`, source, Date.parse(`${date}T${set}Z`), moonset ?? Number.NaN, 0.6);
  });
});

describe('sunrise and sunset', () => {
  it('solar position algorithm, worked example of 2003-10-17: 6:12:43 and 17:20:19, UTC−7 (0.25 min)', () => {
    // The algorithm goes by the day of universal time, so that its sunset is that of the evening before.
    const source = 'Reda and Andreas, NREL/TP-560-34302, worked example; from memory';
    const at = (instant: string) => nightRound(skyInput(39.742476, -105.1786, instant));
    const rise = at('2003-10-17T08:00:00Z').sunrise?.utcMilliseconds ?? Number.NaN;
    const set = at('2003-10-17T00:00:00Z').sunset?.utcMilliseconds ?? Number.NaN;
    checkTime('s13', 'sunrise of 2003-10-17', source, Date.parse('2003-10-17T13:12:43Z'), rise, 0.25);
    checkTime('s13', 'sunset of 2003-10-16', source, Date.parse('2003-10-17T00:20:19Z'), set, 0.25);
  });

  const kinds = [
    ['sunset', 'sunrise', -50 / 60],
    ['civilDusk', 'civilDawn', -6],
    ['nauticalDusk', 'nauticalDawn', -12],
    ['astronomicalDusk', 'astronomicalDawn', -18],
  ] as const;

  /** When the oracle's sun goes through a height, by halving; null where it does not between the two instants. */
  const oracleTime = (height: number, latitude: number, longitude: number, start: number, end: number) => {
    const isOver = (at: number) =>
      oracleSun(new Date(at), radiansFromDegrees(latitude), radiansFromDegrees(longitude)).altitudeRadians >
      radiansFromDegrees(height);
    const first = isOver(start);
    if (first === isOver(end)) return null;
    let [a, b] = [start, end];
    while (b - a > 500) {
      const middle = (a + b) / 2;
      if (isOver(middle) === first) a = middle;
      else b = middle;
    }
    return (a + b) / 2;
  };

  it.each(kinds)(
    '%s and %s at the sun’s height %d° (0.1 min up to 55° of latitude, 60 nights, seed 77)',
    (dusk, dawn, height) => {
      const random = seededRandom(77);
      const source = 'astronomia 4.2.0 (sun by VSOP87 as in Meeus), run in the test';
      let [worst, compared, missing] = [0, 0, 0];
      const compare = (ours: Night['sunset'], oracle: number | null) => {
        expect(ours === null).toBe(oracle === null);
        if (ours === null || oracle === null) missing++;
        else {
          compared++;
          worst = Math.max(worst, Math.abs(ours.utcMilliseconds - oracle));
        }
      };
      for (let i = 0; i < 60; i++) {
        const [latitude, longitude] = [110 * random() - 55, 360 * random() - 180];
        const night = nightRound(skyInput(latitude, longitude, Date.UTC(2025, 0, 1) + random() * 3650 * day));
        const lowest = night.darkest.utcMilliseconds;
        compare(night[dusk], oracleTime(height, latitude, longitude, night.startMilliseconds, lowest));
        compare(night[dawn], oracleTime(height, latitude, longitude, lowest, night.endMilliseconds));
      }
      expect(compared).toBeGreaterThan(90);
      expect(compared + missing).toBe(120);
      checkTime('s14', `${dusk} and ${dawn}: worst of ${compared}`, source, 0, worst, 0.1);
    },
  );
});

describe('phases of the moon', () => {
  it.each([['2017-08-21T18:30:00Z'], ['2024-04-08T18:21:00Z'], ['2026-08-12T17:37:00Z'], ['2027-08-02T10:05:00Z']])(
    'new moon of a solar eclipse, %s: a day later the moon is a day old (1 min)',
    (instant) => {
      const age = moonAgeDays(Date.parse(instant) + day) ?? Number.NaN;
      const source = 'almanac time of new moon; from memory';
      checkTime('s15', `new moon of ${instant.slice(0, 10)}`, source, day, age * day, 1);
    },
  );

  it('48 new moons by Meeus, chapter 49 (1 min), and the nights of 48 of each phase are named by it', () => {
    const source = 'astronomia 4.2.0 (Meeus, chapter 49), run in the test';
    const kinds = [
      ['new moon', moonphase.newMoon],
      ['first quarter', moonphase.first],
      ['full moon', moonphase.full],
      ['last quarter', moonphase.last],
    ] as const;
    let worst = 0;
    for (const [name, phaseOf] of kinds)
      for (let month = 0; month < 48; month++) {
        const instant = julian.JDEToDate(phaseOf(2025 + month * (29.53059 / 365.25))).getTime();
        if (name === 'new moon')
          worst = Math.max(worst, Math.abs((moonAgeDays(instant + day) ?? Number.NaN) * day - day));
        expect(nightRound(skyInput(54, -2, instant)).moonPhase, `${new Date(instant).toISOString()}`).toBe(name);
      }
    checkTime('s15', 'new moon: worst of 48', source, 0, worst, 1);
  });
});
