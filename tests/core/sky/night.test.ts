import { Body, Observer, SearchAltitude, SearchRiseSet } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { nightRound } from '../../../core/sky/night.ts';
import type { SkyEvent } from '../../../core/sky/night-event.ts';
import { nightProbe } from '../../../core/sky/night-probe.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { skyInput } from '../support/sky-inputs.ts';
import { totalSeconds } from './total-seconds.ts';

const day = 86_400_000;
const hour = 3_600_000;
const degrees = (radians: number) => degreesFromRadians(radians);

describe('nightRound', () => {
  it('finds the events that the library’s own search finds (15 s), or finds none where it finds none: 60 nights, seed 5', () => {
    const random = seededRandom(5);
    let [worst, compared, missing] = [0, 0, 0];
    for (let i = 0; i < 60; i++) {
      const [latitude, longitude] = [130 * random() - 65, 360 * random() - 180];
      const night = nightRound(skyInput(latitude, longitude, Date.UTC(2026, 0, 1) + Math.floor(random() * 1000 * day)));
      const observer = new Observer(latitude, longitude, 0);
      const span = (night.endMilliseconds - night.startMilliseconds) / day;
      const start = new Date(night.startMilliseconds);
      const search = (body: Body, direction: number) => SearchRiseSet(body, observer, direction, start, span);
      const sun = (height: number, direction: number) =>
        SearchAltitude(Body.Sun, observer, direction, start, span, height);
      const rows: readonly (readonly [SkyEvent | null, ReturnType<typeof search>])[] = [
        [night.sunset, search(Body.Sun, -1)],
        [night.sunrise, search(Body.Sun, 1)],
        [night.moonrise, search(Body.Moon, 1)],
        [night.moonset, search(Body.Moon, -1)],
        [night.civilDusk, sun(-6, -1)],
        [night.nauticalDusk, sun(-12, -1)],
        [night.astronomicalDusk, sun(-18, -1)],
        [night.astronomicalDawn, sun(-18, 1)],
      ];
      for (const [ours, theirs] of rows) {
        expect(ours === null, `night ${i}`).toBe(theirs === null);
        if (!ours || !theirs) missing++;
        else {
          compared++;
          worst = Math.max(worst, Math.abs(ours.utcMilliseconds - theirs.date.getTime()) / 1000);
        }
      }
    }
    expect(compared).toBeGreaterThan(400);
    expect(missing).toBeGreaterThan(10);
    expect(worst).toBeLessThan(15);
  });

  it('lies between two noons of the sun round the instant, with its lowest half-way, everywhere', () => {
    const random = seededRandom(6);
    for (let i = 0; i < 60; i++) {
      const input = skyInput(160 * random() - 80, 360 * random() - 180, Date.UTC(2026, 0, 1) + random() * 1000 * day);
      const night = nightRound(input);
      expect(night.startMilliseconds).toBeLessThanOrEqual(input.utcMilliseconds);
      expect(night.endMilliseconds).toBeGreaterThan(input.utcMilliseconds);
      expect(Math.abs(night.endMilliseconds - night.startMilliseconds - day)).toBeLessThan(60_000);
      const { sun, sunHourAngle } = nightProbe(input);
      expect(Math.abs(degrees(sunHourAngle(night.startMilliseconds)))).toBeLessThan(1e-3);
      expect(Math.abs(night.darkest.utcMilliseconds - night.startMilliseconds - day / 2)).toBeLessThan(10 * 60_000);
      for (const aside of [-hour, hour])
        expect(sun(night.darkest.utcMilliseconds + aside).altitudeRadians).toBeGreaterThan(
          night.darkest.altitudeRadians,
        );
    }
  });

  it('keeps the order of a night', () => {
    const night = nightRound(skyInput(40, -110, '2026-10-09T05:00:00Z'));
    const times = [
      night.sunset,
      night.civilDusk,
      night.nauticalDusk,
      night.astronomicalDusk,
      night.darkest,
      night.astronomicalDawn,
      night.nauticalDawn,
      night.civilDawn,
      night.sunrise,
    ].map((event) => event?.utcMilliseconds ?? Number.NaN);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(times.every(Number.isFinite)).toBe(true);
    expect(degrees(night.sunset?.altitudeRadians ?? 0)).toBeCloseTo(-50 / 60, 2);
    expect(degrees(night.astronomicalDusk?.altitudeRadians ?? 0)).toBeCloseTo(-18, 2);
    expect(night.dark).toEqual([
      {
        startMilliseconds: night.astronomicalDusk?.utcMilliseconds,
        endMilliseconds: night.astronomicalDawn?.utcMilliseconds,
      },
    ]);
  });

  it('has neither sunset nor dark in polar day, no sunset but dark in polar night, twilight only in a northern June', () => {
    const summer = nightRound(skyInput(70, 20, '2026-06-21T22:00:00Z'));
    expect([summer.sunset, summer.civilDusk, summer.sunrise]).toEqual([null, null, null]);
    expect(summer.darkest.altitudeRadians).toBeGreaterThan(0);
    expect(summer.dark).toEqual([]);
    const winter = nightRound(skyInput(75, 20, '2026-12-21T22:00:00Z'));
    expect([winter.sunset, winter.civilDusk, winter.sunrise]).toEqual([null, null, null]);
    expect(winter.noonAltitudeRadians).toBeLessThan(0);
    expect(winter.nauticalDusk).not.toBeNull();
    expect(totalSeconds(winter.dark)).toBeGreaterThan(8 * 3600);
    const white = nightRound(skyInput(58, -4, '2026-06-21T22:00:00Z'));
    expect(white.sunset).not.toBeNull();
    expect([white.astronomicalDusk, white.astronomicalDawn, white.nauticalDusk]).toEqual([null, null, null]);
    const pole = nightRound(skyInput(90, 0, '2026-12-21T22:00:00Z'));
    expect(totalSeconds(pole.dark)).toBeCloseTo((pole.endMilliseconds - pole.startMilliseconds) / 1000, 0);
    expect(pole.astronomicalDusk).toBeNull();
  });

  it('finds a dark of a few minutes where the sun only just gets 18° down', () => {
    // 90 - 18 - 23.44 = 48.56 degrees of latitude at the solstice: a hair under it there is some dark.
    const lengths = [48.3, 48.5, 48.54].map(
      (latitude) => totalSeconds(nightRound(skyInput(latitude, 10, '2026-06-21T22:00:00Z')).dark) / 60,
    );
    expect(lengths.every((minutes) => minutes > 0)).toBe(true);
    expect(lengths[2]).toBeLessThan(40);
    expect(nightRound(skyInput(48.6, 10, '2026-06-21T22:00:00Z')).dark).toEqual([]);
  });

  it('has a dark moonless stretch that is dark, and in which the moon is down, minute by minute', () => {
    const random = seededRandom(7);
    for (let i = 0; i < 12; i++) {
      const input = skyInput(100 * random() - 50, 360 * random() - 180, Date.UTC(2026, 0, 1) + random() * 1000 * day);
      const night = nightRound(input);
      const { sun, moonTopRadians } = nightProbe(input);
      let minutes = 0;
      for (let at = night.startMilliseconds; at < night.endMilliseconds; at += 60_000)
        if (degrees(sun(at).altitudeRadians) < -18 && degrees(moonTopRadians(at)) < -34 / 60) minutes++;
      expect(Math.abs(totalSeconds(night.darkMoonless) / 60 - minutes)).toBeLessThan(3);
    }
  });

  it('tells the core of a southern August night: high in the north-south line, up when it gets dark', () => {
    const { core, dark } = nightRound(skyInput(-33, 149, '2026-08-11T10:30:00Z'));
    // At the meridian: 90 - |latitude - declination|; declination of date -29.0.
    expect(degrees(core.highest?.altitudeRadians ?? 0)).toBeCloseTo(90 - (33 - 29.02), 0);
    expect(core.upInDark).toHaveLength(1);
    expect(core.upInDark[0]?.startMilliseconds).toBe(dark[0]?.startMilliseconds);
    expect(core.highestInDark).toEqual(core.highest);
    expect(degrees(core.rise?.bearingRadians ?? 0)).toBeCloseTo(360 - degrees(core.set?.bearingRadians ?? 0), 1);
  });

  it('has the core at its highest at no other minute of the night, at all times of the year', () => {
    for (let week = 0; week < 52; week += 2) {
      const input = skyInput(week % 4 === 0 ? 35 : -20, 20, Date.UTC(2026, 0, 1, 18) + week * 7 * day);
      const { startMilliseconds, endMilliseconds, core } = nightRound(input);
      const { core: coreAt } = nightProbe(input);
      expect(core.highest?.utcMilliseconds).toBeGreaterThanOrEqual(startMilliseconds);
      expect(core.highest?.utcMilliseconds).toBeLessThan(endMilliseconds);
      const minutes = Array.from({ length: 1436 }, (_, i) => coreAt(startMilliseconds + i * 60_000).altitudeRadians);
      const highest = degrees(core.highest?.altitudeRadians ?? 0);
      expect(highest).toBeGreaterThan(degrees(Math.max(...minutes)) - 1e-5);
      expect(highest).toBeLessThan(degrees(Math.max(...minutes)) + 0.01);
    }
  });

  it('has no core north of 61°, none in the dark of a northern November, and a core that never sets at the south pole', () => {
    const north = nightRound(skyInput(62, 10, '2026-04-20T22:00:00Z')).core;
    expect(north).toEqual({ rise: null, set: null, highest: null, upInDark: [], highestInDark: null });
    const november = nightRound(skyInput(50, 10, '2026-12-15T22:00:00Z')).core;
    expect(november.highest).not.toBeNull();
    expect([november.upInDark, november.highestInDark]).toEqual([[], null]);
    const pole = nightRound(skyInput(-89, 10, '2026-06-20T12:00:00Z')).core;
    expect([pole.rise, pole.set]).toEqual([null, null]);
    expect(pole.highestInDark?.altitudeRadians).toBeCloseTo(pole.highest?.altitudeRadians ?? 0, 9);
  });

  it('has a moon between 0 and 29.9 days old on each of 400 nights, older night by night until it is new', () => {
    let last = 0;
    for (let i = 0; i < 400; i += 5) {
      const { moonAgeDays, moonLitShare } = nightRound(skyInput(54, -2, Date.UTC(2026, 0, 1) + i * day));
      const age = moonAgeDays ?? Number.NaN;
      expect(age).toBeGreaterThanOrEqual(0);
      expect(age).toBeLessThan(29.9);
      if (age > last) expect(age - last).toBeLessThan(i === 0 ? 30 : 5.1);
      expect(Math.abs(moonLitShare - (1 - Math.cos((2 * Math.PI * age) / 29.53)) / 2)).toBeLessThan(0.13);
      last = age;
    }
  });
});
