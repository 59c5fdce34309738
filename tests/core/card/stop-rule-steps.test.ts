import { describe, expect, it } from 'vitest';
import { afterVerdict, type Going, movedHours } from '../../../core/card/stop-rule-steps.ts';

const planned: Going = { seconds: 8, distanceTimes: 1, hoursMoved: 0, heightTimes: 1, levelTimes: 1 };
const limits = {
  mostSeconds: 20,
  staysOn: false,
  clockHours: 8,
  heightMetres: 1.6,
  leastTimes: 1 / 3,
  mostTimes: 3,
  leastLevelTimes: 1,
};

/** Light of a pass in stops against another: the count, the level, and the inverse square of the distance. */
const stopsOver = (a: Going, b: Going): number =>
  Math.log2(a.seconds / b.seconds) +
  Math.log2(a.levelTimes / b.levelTimes) -
  2 * Math.log2(a.distanceTimes / b.distanceTimes);

/** So often flat, from a clock position: where it stood each time. */
const flats = (clockHours: number, times: number, heightMetres = 1.6) => {
  const gone = [planned];
  for (let i = 0; i < times; i++) {
    const last = gone.at(-1) as Going;
    gone.push(
      afterVerdict(last, 'flat', { ...limits, heightMetres, clockHours: movedHours(clockHours, last.hoursMoved) }),
    );
  }
  return gone.map(({ hoursMoved, heightTimes }) => ({
    hours: movedHours(clockHours, hoursMoved),
    metres: heightMetres * heightTimes,
  }));
};

describe('afterVerdict: the stop rules of the trade (common practice, no published source)', () => {
  it('too bright: halves the count', () => {
    expect(afterVerdict(planned, 'too-bright', limits)).toEqual({ ...planned, seconds: 4 });
  });

  it('too bright where half the count can’t be spoken: turns the lamp down as far as it goes, then steps back', () => {
    // two is the shortest count of the trade; this lamp goes down to a fifth
    const dimmable = { ...limits, leastLevelTimes: 0.2 };
    const gone = [{ ...planned, seconds: 5 }];
    for (let i = 0; i < 4; i++) gone.push(afterVerdict(gone.at(-1) as Going, 'too-bright', dimmable));
    expect(gone.map(({ seconds, levelTimes }) => [seconds, levelTimes])).toEqual([
      [5, 1],
      [2.5, 1],
      [2.5, 0.5],
      [2.5, 0.25],
      [2.5, 0.25],
    ]);
    expect(gone.map(({ distanceTimes }) => Number(distanceTimes.toFixed(1)))).toEqual([1, 1, 1, 1, 1.4]);
  });

  it('too dark after that: counts longer, and turns the lamp up before it goes nearer', () => {
    const dimmed = { ...planned, seconds: 10.1, levelTimes: 0.25 };
    expect(afterVerdict({ ...dimmed, seconds: 2.5 }, 'too-dark', limits)).toMatchObject({
      seconds: 5,
      levelTimes: 0.25,
    });
    expect(afterVerdict(dimmed, 'too-dark', limits)).toEqual({ ...dimmed, levelTimes: 0.5 });
  });

  it('too bright with a lamp that can’t be dimmed, or stays on: steps back 1.4 times as far', () => {
    const short = { ...planned, seconds: 3.5 };
    expect(afterVerdict(short, 'too-bright', limits).distanceTimes).toBeCloseTo(1.4, 1);
    expect(afterVerdict(short, 'too-bright', limits).seconds).toBe(3.5);
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

  it.each(['too-bright', 'too-dark'] as const)(
    '%s on and on: whole stops, as far as is allowed, and no farther',
    (verdict) => {
      const staysOn = { ...limits, staysOn: true };
      const gone = [planned];
      for (let i = 0; i < 20; i++) gone.push(afterVerdict(gone.at(-1) as Going, verdict, staysOn));
      const stops = gone.map((going) => Math.abs(stopsOver(going, planned)));
      // three times as far is 3.2 stops
      for (const [i, stop] of stops.entries()) expect(stop).toBeCloseTo(Math.min(i, 3), 9);
      expect(gone.at(-1)).toBe(gone.at(-2));
    },
  );

  it('flat: one thing at a time, first half as high, then one hour round the clock, away from the camera at six', () => {
    expect([7, 8, 5, 4, 6].map((hours) => flats(hours, 2).slice(1))).toEqual(
      [
        [7, 8],
        [8, 9],
        [5, 4],
        [4, 3],
        [6, 7],
      ].map(([from, to]) => [
        { hours: from, metres: 0.8 },
        { hours: to, metres: 0.8 },
      ]),
    );
  });

  it('flat on and on: by turns, always the same way, up to the side, where it stays, and down to a hand over the ground', () => {
    expect(flats(6.5, 16).map(({ hours }) => hours)).toEqual([6.5, 6.5, 7.5, 7.5, 8.5, 8.5, ...Array(11).fill(9)]);
    expect(flats(5, 16).map(({ hours }) => hours)).toEqual([5, 5, 4, 4, ...Array(13).fill(3)]);
    expect(flats(8, 16).map(({ metres }) => metres)).toEqual([1.6, 0.8, 0.8, 0.4, 0.2, ...Array(12).fill(0.1)]);
    for (const hours of [6.5, 5, 8]) {
      const gone = flats(hours, 16);
      const changed = gone.slice(1).map((each, i) => [each.hours !== gone[i]?.hours, each.metres !== gone[i]?.metres]);
      expect(changed).not.toContainEqual([true, true]);
    }
  });

  it('flat behind the subject: only lower, for farther round is more of a back light', () => {
    for (const hours of [2.5, 0, 11, 9.125])
      expect(flats(hours, 3).map((each) => each.hours)).toEqual(Array(4).fill(hours));
  });

  it('flat: a lamp that is planned on the ground is not lifted, and at the side nothing is left to change', () => {
    expect(flats(8, 2, 0.05).map(({ metres }) => metres)).toEqual([0.05, 0.05, 0.05]);
    expect(afterVerdict(planned, 'flat', { ...limits, clockHours: 9, heightMetres: 0.1 })).toBe(planned);
  });

  it('good and not said change nothing', () => {
    expect(afterVerdict(planned, 'good', limits)).toBe(planned);
    expect(afterVerdict(planned, 'not-said', limits)).toBe(planned);
  });
});
