import { describe, expect, it } from 'vitest';
import { degreesApart, degreesFromRadians, radiansFromDegrees, wrapDegrees } from '../../../core/units/angle.ts';
import { bodyHeights, bodyHeightWord } from '../../../core/units/body-height.ts';
import { clockHoursFromTurn, clockText, turnFromClockHours } from '../../../core/units/clock.ts';
import { ratioFromStops, stopsFromRatio } from '../../../core/units/stops.ts';
import { stepThird } from '../../../core/units/third-stops.ts';

// the clock round the subject, camera at six: common practice, no published source
describe('clock', () => {
  it.each([
    [0, 6],
    [90, 3],
    [-90, 9],
    [45, 4.5],
    [135, 1.5],
    [-120, 10],
    [180, 0],
    [-180, 0],
  ])('a turn of %d degrees is %d hours, and back (abs 1e-12)', (degrees, hours) => {
    const turn = radiansFromDegrees(degrees);
    expect(clockHoursFromTurn(turn)).toBeCloseTo(hours, 12);
    const back = turnFromClockHours(hours);
    expect(Math.abs(Math.sin((back - turn) / 2))).toBeLessThanOrEqual(1e-12);
  });
  it('hours stay in [0, 12) and the round trip holds for any turn (abs 1e-12)', () => {
    for (let turn = -20; turn < 20; turn += 0.37) {
      const hours = clockHoursFromTurn(turn);
      expect(hours).toBeGreaterThanOrEqual(0);
      expect(hours).toBeLessThan(12);
      expect(Math.abs(Math.sin((turnFromClockHours(hours) - turn) / 2))).toBeLessThanOrEqual(1e-12);
    }
  });
  it.each([
    [0, '12:00'],
    [3, '3:00'],
    [2.5, '2:30'],
    [1.5, '1:30'],
    [10.75, '10:45'],
    [3.04, '3:00'],
    [3.05, '3:05'],
    [5.99, '6:00'],
    [11.99, '12:00'],
    [0.25, '12:15'],
  ])('%d hours is told as %s (five minutes)', (hours, text) => {
    expect(clockText(hours)).toBe(text);
  });
});

describe('stepThird', () => {
  it.each([
    ['aperture', 2.8, 1, 3.2],
    ['aperture', 2.8, -1, 2.5],
    ['aperture', 2.7, 1, 2.8],
    ['aperture', 32, 1, 32],
    ['aperture', 1, -1, 1],
    ['iso', 400, 1, 500],
    ['iso', 6400, -1, 5000],
    ['seconds', 1, 1, 1.3],
    ['seconds', 30, 1, 40],
    ['seconds', 1 / 15, -1, 1 / 20],
    ['seconds', 0.1, -1, 1 / 13],
  ] as const)('%s %d, direction %d: %d', (scale, value, direction, next) => {
    expect(stepThird(scale, value, direction)).toBe(next);
  });

  it.each([
    ['aperture', 1, 31, 2 ** (1 / 6)],
    ['iso', 50, 31, 2 ** (1 / 3)],
    ['seconds', 1 / 30, 46, 2 ** (1 / 3)],
  ] as const)(
    '%s climbs from %d in %d markings a third of a stop apart (0.15 stop: trap T8, markings are rounded), and the same way down',
    (scale, first, count, ratio) => {
      const up: number[] = [first];
      for (let next = stepThird(scale, first, 1); next !== up.at(-1); next = stepThird(scale, next, 1)) up.push(next);
      expect(up).toHaveLength(count);
      const stopsAStep = Math.log2(ratio);
      const per = scale === 'aperture' ? 2 : 1;
      for (let k = 1; k < up.length; k++) {
        const step = Math.log2((up[k] as number) / (up[k - 1] as number));
        expect(Math.abs(step - stopsAStep) * per).toBeLessThanOrEqual(0.15);
        expect(stepThird(scale, up[k] as number, -1)).toBe(up[k - 1]);
      }
    },
  );
});

// heights are common practice, no published source
describe('bodyHeightWord', () => {
  it('gives each height of the table its own word', () => {
    for (const { word, metres } of bodyHeights) expect(bodyHeightWord(metres)).toBe(word);
  });
  it.each([
    [-0.01, 'buried'],
    [0, 'ground'],
    [0.28, 'shin'],
    [0.45, 'knee'],
    [1.05, 'hip'],
    [1.5, 'chest'],
    [2.2, 'overhead'],
    [3, 'overhead'],
    [3.01, 'on a pole'],
    [8, 'on a pole'],
    [8.01, 'high up'],
    [1000, 'high up'],
  ])('%d m is %s', (metres, word) => {
    expect(bodyHeightWord(metres)).toBe(word);
  });
});

describe('stops and angles', () => {
  it('double the light is one stop; no light is minus infinity; round trips (rel 1e-12)', () => {
    expect(stopsFromRatio(2)).toBe(1);
    expect(stopsFromRatio(0)).toBe(Number.NEGATIVE_INFINITY);
    for (const stops of [-7.3, 0, 0.1, 12]) expect(stopsFromRatio(ratioFromStops(stops))).toBeCloseTo(stops, 12);
  });
  it('degrees and radians undo each other; bearings wrap into [0, 360)', () => {
    for (const degrees of [-400, -90, 0, 12.5, 360]) {
      expect(degreesFromRadians(radiansFromDegrees(degrees))).toBeCloseTo(degrees, 10);
      expect(wrapDegrees(degrees)).toBeGreaterThanOrEqual(0);
      expect(wrapDegrees(degrees)).toBeLessThan(360);
    }
    expect(radiansFromDegrees(180)).toBe(Math.PI);
    expect(wrapDegrees(-90)).toBe(270);
    expect(wrapDegrees(360)).toBe(0);
  });
  it('the angle between two bearings is the smaller way round, either way (exact)', () => {
    const pairs = [
      [350, 10, 20],
      [10, 350, 20],
      [0, 180, 180],
      [-90, 270, 0],
      [90, 700, 110],
    ] as const;
    for (const [a, b, apart] of pairs) expect(degreesApart(a, b)).toBe(apart);
  });
});
