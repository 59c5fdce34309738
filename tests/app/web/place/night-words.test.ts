import { describe, expect, it } from 'vitest';
import { standWords } from '../../../../app/web/place/core-words.ts';
import { groundLightOf } from '../../../../app/web/place/ground-light.ts';
import { hourRows, hourWords, nightRows } from '../../../../app/web/place/hour-rows.ts';
import { bandWord, coreUp, lightBands, upWords } from '../../../../app/web/place/night-bands.ts';
import { atX, hourTicks, type NightScale, xOf } from '../../../../app/web/place/night-scale.ts';
import { emptySetup } from '../../../../app/web/state/empty-setup.ts';
import { hourOf } from '../../../../app/web/state/hour-of-place.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { nightOf } from '../../../../core/sky/night-of.ts';
import { degreesFromRadians } from '../../../../core/units/angle.ts';
import { plainAir } from '../../../../core/world/sky-of-place.ts';

const plain = emptySetup().place;
const at = (
  latitudeDegrees: number,
  longitudeDegrees: number,
  localTime: string,
  timeZone: string,
): Setup['place'] => ({
  ...plain,
  latitudeDegrees,
  longitudeDegrees,
  localTime,
  timeZone,
});

const read = (place: Setup['place']) => {
  const hour = hourOf(place);
  if (!hour) throw new Error('no hour');
  const night = nightOf(hour.sky.input);
  const rows = Object.fromEntries([...nightRows(night, place.timeZone)]);
  const now = Object.fromEntries([...hourRows(hour, groundLightOf(place))].map(([name, text]) => [name, text]));
  return { hour, night, rows, now };
};

describe('the night in words', () => {
  it('tells rise and set of the moon as the almanac does, to the minute, in the clock of the place', () => {
    // USNO one-year table for 2050, E150 S45, 5 August: rise 10:01 UT, set 22:27 UT
    expect(read(at(-45, 150, '2050-08-05T22:00', 'Etc/GMT-10')).rows['Moon']).toBe('rises 20:01 · sets 08:27');
  });

  it('says what does not happen: no dark in a northern summer, no sunset, no sunrise', () => {
    expect(read(at(60, 0, '2026-06-21T23:00', 'Etc/UTC')).rows['Dark']).toBe('never quite: the sun is 7° down at most');
    // at midsummer the sun at 70 degrees is lowest 70 + 23.4 - 90 = 3.4 degrees up
    expect(read(at(70, 0, '2026-06-21T23:00', 'Etc/UTC')).rows['Dark']).toBe(
      'not at all: the sun stays 3° up or higher',
    );
    expect(read(at(90, 0, '2026-12-21T23:00', 'Etc/UTC')).rows['Dark']).toBe('from noon to noon');
    expect(read(at(75, 0, '2026-06-21T23:00', 'Etc/UTC')).rows['Sun']).toBe('does not set');
    expect(read(at(75, 0, '2026-12-21T23:00', 'Etc/UTC')).rows['Sun']).toBe('does not rise');
    expect(read(at(75, 0, '2026-06-21T23:00', 'Etc/UTC')).rows['Core in the dark']).toBe('not this night');
  });

  it('shadows fall away from the moon, as long as its height’s cotangent says', () => {
    const { hour, now } = read(at(-33, 149, '2026-08-20T20:30', 'Australia/Sydney'));
    const { moon } = hour.sky;
    const shadow = /^fall to (\d+)° \w+, ([\d.]+) × the height$/.exec(now['Its shadows'] ?? '');
    const moonBearing = degreesFromRadians(moon.bearingRadians);
    expect(Math.abs(((Number(shadow?.[1]) - moonBearing + 360) % 360) - 180)).toBeLessThanOrEqual(0.5);
    expect(Number(shadow?.[2])).toBeCloseTo(1 / Math.tan(moon.altitudeRadians), 1);
    expect(hourWords(hour)).toMatch(/^dark · moon 56° up, 273° W · core \d+° up, \d+° \w+$/);
  });

  it('has no moonlight and no shadows while the moon is down', () => {
    const { now } = read(at(-33, 149, '2026-08-11T20:30', 'Australia/Sydney'));
    expect(now['Moon']).toMatch(/below the horizon/);
    expect(now).not.toHaveProperty('Moonlight');
    expect(now).not.toHaveProperty('Its shadows');
  });
});

describe('light of the sky without lamps', () => {
  const dark = { ...plain, sky: { ...plainAir, zenithMagnitude: 22 } };
  const lightAt = (place: Setup['place']) => {
    const light = groundLightOf(place);
    if (!light) throw new Error('no light');
    return light;
  };
  const winter = {
    ...dark,
    latitudeDegrees: 50,
    longitudeDegrees: 0,
    timeZone: 'Etc/UTC',
    localTime: '2026-01-18T02:00',
  };

  it('on a dark moonless night is a thousandth of a lux or so (literature: 0.6 to 1 mlx, from memory), straight up as a meter says', () => {
    const { lux, zenithMagnitude } = lightAt(winter);
    expect(lux).toBeGreaterThan(4e-4);
    expect(lux).toBeLessThan(1.5e-3);
    // the winter Milky Way may be up there
    expect(zenithMagnitude).toBeGreaterThan(21.4);
    expect(zenithMagnitude).toBeLessThanOrEqual(22.1);
  });

  it('grows with the moon, with dusk, and with a town', () => {
    const { lux } = lightAt(winter);
    expect(lightAt({ ...winter, localTime: '2026-01-03T23:00' }).lux).toBeGreaterThan(5 * lux);
    expect(lightAt({ ...winter, localTime: '2026-01-18T17:15' }).lux).toBeGreaterThan(5 * lux);
    const dome = {
      name: '',
      bearingDegrees: 90,
      widthDegrees: 20,
      luminanceAt10DegreesCdM2: 0.02,
      temperatureKelvin: 2700,
    };
    expect(lightAt({ ...winter, glowDomes: [dome] }).lux).toBeGreaterThan(2 * lux);
  });
});

describe('lightBands', () => {
  const kindsAt = (latitude: number, date: string) => {
    const { night } = read(at(latitude, 0, `${date}T23:00`, 'Etc/UTC'));
    const bands = lightBands(night);
    expect(bands[0]?.startMilliseconds).toBe(night.startMilliseconds);
    expect(bands.at(-1)?.endMilliseconds).toBe(night.endMilliseconds);
    const ends = bands.slice(0, -1).map(({ endMilliseconds }) => endMilliseconds);
    expect(bands.slice(1).map(({ startMilliseconds }) => startMilliseconds)).toEqual(ends);
    return bands.map(({ kind }) => kind).join(' ');
  };

  it('go from day to dark and back, without gaps, at middle latitudes', () => {
    expect(kindsAt(45, '2026-10-09')).toBe('day civil nautical astronomical dark astronomical nautical civil day');
  });

  it('stop where the sun turns: white nights, midnight sun, polar night', () => {
    // the sun at its lowest: latitude + 23.4 - 90 degrees; at noon in December: 66.6 - latitude
    expect(kindsAt(55, '2026-06-21')).toBe('day civil nautical civil day');
    expect(kindsAt(63, '2026-06-21')).toBe('day civil day');
    expect(kindsAt(70, '2026-06-21')).toBe('day');
    expect(kindsAt(70, '2026-12-21')).toBe('civil nautical astronomical dark astronomical nautical civil');
    expect(kindsAt(87, '2026-12-21')).toBe('dark');
  });
});

describe('words in the bands', () => {
  const { night } = read(at(-33, 149, '2026-08-20T20:30', 'Australia/Sydney'));
  const clock = (milliseconds: number) => new Date(milliseconds + 36_000_000).toISOString().slice(11, 16);

  it('tell the times where there is room, a word where there is less, nothing where there is none', () => {
    const dark = lightBands(night).find(({ kind }) => kind === 'dark');
    if (!dark) throw new Error('no dark');
    expect(bandWord(dark, 'Australia/Sydney', 300)).toMatch(/^dark 19:0\d to 05:1\d$/);
    expect([100, 20].map((pixels) => bandWord(dark, 'Australia/Sydney', pixels))).toEqual(['dark', '']);
  });

  it('a bar that the noon cuts off says only the end that is seen', () => {
    const [first, second] = night.moonUp;
    if (!first || !second) throw new Error('the moon sets and rises that night');
    expect(upWords(first, night, 'Australia/Sydney', 300)).toMatch(/^up to 01:2\d$/);
    expect(upWords(second, night, 'Australia/Sydney', 300)).toMatch(/^up from 11:1\d$/);
    const { startMilliseconds, endMilliseconds } = night;
    expect(upWords({ startMilliseconds, endMilliseconds }, night, 'Australia/Sydney', 300)).toBe('up all night');
    expect(upWords(first, night, 'Australia/Sydney', 10)).toBe('');
  });

  it('a night of the core tells day, times, heights and moon', () => {
    const event = (hours: number, altitudeRadians: number) => ({
      utcMilliseconds: Date.UTC(2026, 5, 12, hours),
      altitudeRadians,
      bearingRadians: 3,
    });
    const stand = { start: event(13, 0.14), end: event(14, 0.2), moonAltitudeRadians: -0.1, moonLitShare: 0.3 };
    expect(standWords(stand, 'Etc/GMT-10')).toBe(
      `Fri 12 Jun 2026 · ${clock(stand.start.utcMilliseconds)} to ${clock(stand.end.utcMilliseconds)} · 8° to 11° up · moon down`,
    );
    expect(standWords({ ...stand, moonAltitudeRadians: 0.1 }, 'Etc/UTC')).toMatch(/moon up, 30 % lit$/);
  });
});

describe('coreUp', () => {
  it('covers the moments at which the core is over the horizon, and no others (looked at every ten minutes)', () => {
    for (const [latitude, date] of [
      [-33, '2026-05-11'],
      [-33, '2026-11-20'],
      [30, '2026-08-01'],
      [54, '2026-06-11'],
      [70, '2026-06-11'],
      [-80, '2026-06-11'],
    ] as const) {
      const start = at(latitude, 0, `${date}T22:00`, 'Etc/UTC');
      const { night } = read(start);
      const spans = coreUp(night);
      for (let t = night.startMilliseconds; t < night.endMilliseconds; t += 600_000) {
        const hour = hourOf({ ...start, localTime: new Date(t).toISOString().slice(0, 19) });
        const height = degreesFromRadians(hour?.core.altitudeRadians ?? Number.NaN) + 34 / 60;
        if (Math.abs(height) < 0.05) continue;
        const isUp = spans.some((span) => t >= span.startMilliseconds && t <= span.endMilliseconds);
        expect([date, latitude, t, isUp]).toEqual([date, latitude, t, height > 0]);
      }
    }
  });
});

describe('the scale from noon to noon', () => {
  const span = { startMilliseconds: Date.UTC(2026, 9, 9, 12), endMilliseconds: Date.UTC(2026, 9, 10, 12) };
  const scale: NightScale = { span, left: 44, width: 480 };

  it('there and back gives the same instant, and stops at its ends', () => {
    for (const hours of [0, 3.25, 24]) {
      const t = span.startMilliseconds + hours * 3_600_000;
      expect(atX(scale, xOf(scale, t))).toBeCloseTo(t, 3);
    }
    expect(atX(scale, -100)).toBe(span.startMilliseconds);
    expect(atX(scale, 1e4)).toBe(span.endMilliseconds);
  });

  it('ticks stand at the hours of the clock, also where that is off by three quarters of an hour', () => {
    expect(hourTicks(scale, 'Etc/UTC', 6).map(({ hour }) => hour)).toEqual([12, 18, 0, 6, 12]);
    for (const { at: t } of hourTicks(scale, 'Asia/Kathmandu', 3)) expect(new Date(t).getUTCMinutes()).toBe(15);
  });
});
