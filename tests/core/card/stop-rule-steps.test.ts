import { describe, expect, it } from 'vitest';
import { afterVerdict, type Going, movedHours } from '../../../core/card/stop-rule-steps.ts';

const planned: Going = { seconds: 8, distanceTimes: 1, hoursMoved: 0, heightTimes: 1 };
const limits = { mostSeconds: 20, staysOn: false, clockHours: 8 };

/** Light of a pass in stops against another: the count, and the inverse square of the distance. */
const stopsOver = (a: Going, b: Going): number =>
  Math.log2(a.seconds / b.seconds) - 2 * Math.log2(a.distanceTimes / b.distanceTimes);

describe('afterVerdict: the stop rules of the trade (common practice, no published source)', () => {
  it('too bright: halves the count', () => {
    expect(afterVerdict(planned, 'too-bright', limits)).toEqual({ ...planned, seconds: 4 });
  });

  it('too bright under two seconds, or on a stand that stays on: steps back 1.4 times as far', () => {
    const short = { ...planned, seconds: 1.5 };
    expect(afterVerdict(short, 'too-bright', limits).distanceTimes).toBeCloseTo(1.4, 1);
    expect(afterVerdict(short, 'too-bright', limits).seconds).toBe(1.5);
    expect(afterVerdict(planned, 'too-bright', { ...limits, staysOn: true }).distanceTimes).toBeCloseTo(1.4, 1);
  });

  it('too dark: doubles the count as long as the shutter is open, and goes nearer where it is not', () => {
    expect(afterVerdict(planned, 'too-dark', limits)).toEqual({ ...planned, seconds: 16 });
    expect(afterVerdict({ ...planned, seconds: 10 }, 'too-dark', limits).seconds).toBe(20);
    const long = afterVerdict({ ...planned, seconds: 10.1 }, 'too-dark', limits);
    expect(long.seconds).toBe(10.1);
    expect(long.distanceTimes).toBeCloseTo(1 / 1.4, 1);
  });

  it.each([1, 2, 4, 8, 16])('each takes or gives one stop, whichever way it goes (from %i s)', (seconds) => {
    const going = { ...planned, seconds };
    expect(stopsOver(afterVerdict(going, 'too-bright', limits), going)).toBeCloseTo(-1, 12);
    expect(stopsOver(afterVerdict(going, 'too-dark', limits), going)).toBeCloseTo(1, 12);
  });

  it('flat: half as high, one hour round the clock, away from the camera at six up to ten and two', () => {
    const to = (clockHours: number) => {
      const next = afterVerdict(planned, 'flat', { ...limits, clockHours });
      expect([next.heightTimes, next.seconds, next.distanceTimes]).toEqual([0.5, 8, 1]);
      return movedHours(clockHours, next.hoursMoved);
    };
    expect([to(7), to(8.5), to(9)]).toEqual([8, 9.5, 10]);
    expect([to(5), to(3.5), to(3)]).toEqual([4, 2.5, 2]);
    expect([to(11.5), to(0), to(1)]).toEqual([10.5, 1, 2]);
    expect(to(6)).toBe(7);
  });

  it('goes on from where it was moved to, not from the plan', () => {
    const once = afterVerdict(planned, 'flat', limits);
    const twice = afterVerdict(once, 'flat', limits);
    const thrice = afterVerdict(twice, 'flat', limits);
    expect([once, twice, thrice].map(({ hoursMoved }) => movedHours(8, hoursMoved))).toEqual([9, 10, 9]);
  });

  it('good and not said change nothing', () => {
    expect(afterVerdict(planned, 'good', limits)).toBe(planned);
    expect(afterVerdict(planned, 'not-said', limits)).toBe(planned);
  });

  it('stays within what the document holds however often it is said', () => {
    let going = planned;
    for (let i = 0; i < 60; i++) going = afterVerdict(going, i % 2 ? 'flat' : 'too-bright', limits);
    expect(going.distanceTimes).toBeLessThanOrEqual(100);
    expect(going.heightTimes).toBeGreaterThanOrEqual(0.01);
    expect(Math.abs(going.hoursMoved)).toBeLessThanOrEqual(12);
    expect(going.seconds).toBeGreaterThanOrEqual(1);
  });
});
