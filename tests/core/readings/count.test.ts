import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atLevel,
  countLadder,
  isoForCount,
  levelForCount,
  type PassLight,
  paintBudgetLumenSeconds,
  secondsForLevel,
  spokenCount,
  stopsAfterCount,
} from '../../../core/readings/count.ts';
import { relativeError } from '../support/errors.ts';

const seed = 8;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const passLight: fc.Arbitrary<PassLight> = fc.record({
  seconds: between(0.01, 900),
  levelPercent: between(0.1, 100),
  iso: between(25, 51200),
  stops: between(-12, 12),
});
const wanted = between(-4, 1);
/** Twice the light is one stop: the level a pass comes to with a factor more light. */
const stopsWith = ({ stops }: PassLight, factor: number) => stops + Math.log2(factor);
const law = (property: (pass: PassLight, wantedStops: number, seconds: number) => void) =>
  fc.assert(fc.property(passLight, wanted, between(0.01, 900), property), { seed, numRuns: 300 });

// light times time times speed is what a sensor adds up (reciprocity; first principles)
describe(`counts, levels and speeds (300 passes, seed ${seed})`, () => {
  it('secondsForLevel: the pass with that count comes to the wanted level (abs 1e-9 stops)', () => {
    law((pass, wantedStops) => {
      const seconds = secondsForLevel(pass, wantedStops);
      expect(stopsWith(pass, seconds / pass.seconds)).toBeCloseTo(wantedStops, 9);
      expect(stopsAfterCount(pass, seconds)).toBeCloseTo(wantedStops, 9);
    });
  });

  it('levelForCount: at that level the wanted count is the one asked for (rel 1e-9)', () => {
    law((pass, wantedStops, seconds) => {
      const levelPercent = levelForCount(pass, wantedStops, seconds);
      const turned = { ...pass, levelPercent, stops: stopsWith(pass, levelPercent / pass.levelPercent) };
      expect(relativeError(secondsForLevel(turned, wantedStops), seconds)).toBeLessThanOrEqual(1e-9);
      expect(relativeError(secondsForLevel(atLevel(pass, levelPercent), wantedStops), seconds)).toBeLessThan(1e-9);
    });
  });

  it('isoForCount: at that speed the wanted count is the one asked for (rel 1e-9)', () => {
    law((pass, wantedStops, seconds) => {
      const iso = isoForCount(pass, wantedStops, seconds);
      const faster = { ...pass, iso, stops: stopsWith(pass, iso / pass.iso) };
      expect(relativeError(secondsForLevel(faster, wantedStops), seconds)).toBeLessThanOrEqual(1e-9);
    });
  });

  it('half the level needs twice the count; one stop more needs twice the count (rel 1e-9)', () => {
    law((pass, wantedStops) => {
      const now = secondsForLevel(pass, wantedStops);
      const half = secondsForLevel(atLevel(pass, pass.levelPercent / 2), wantedStops);
      expect(relativeError(half / now, 2)).toBeLessThanOrEqual(1e-9);
      expect(relativeError(secondsForLevel(pass, wantedStops + 1) / now, 2)).toBeLessThanOrEqual(1e-9);
    });
  });
});

describe('spokenCount', () => {
  it('is within the frame, and no other count that the frame holds is nearer in stops', () => {
    fc.assert(
      fc.property(between(0.05, 2000), between(1, 1200), (seconds, frameSeconds) => {
        const spoken = spokenCount(seconds, frameSeconds) as number;
        expect(spoken).toBeLessThanOrEqual(frameSeconds);
        expect(Number.isInteger(spoken)).toBe(true);
        // whichever nearest count it is, that count itself is spoken as it is
        expect(spokenCount(spoken, frameSeconds)).toBe(spoken);
        const away = Math.abs(Math.log2(spoken / seconds));
        for (const other of [1, 2, 3, 5, 10, 15, 20, 30, 60, 120, 300, 600])
          if (other <= frameSeconds) expect(away).toBeLessThanOrEqual(Math.abs(Math.log2(other / seconds)));
      }),
      { seed, numRuns: 300 },
    );
  });
  it('is null for a frame shorter than any count', () => expect(spokenCount(0.4, 0.5)).toBeNull());
  it('is the first or the last count outside them', () => {
    expect([spokenCount(0.2, 10), spokenCount(5000, 10), spokenCount(5000, 36000)]).toEqual([1, 10, 900]);
  });
});

describe('paintBudgetLumenSeconds', () => {
  // a lumen is a lux on a square metre: SI
  it('10 lx for 3 s on 4 m2 are 120 lm s', () => expect(paintBudgetLumenSeconds(30, 4)).toBe(120));
});

describe('countLadder', () => {
  // 4 s at mid-grey: 2, 3, 5 and 8 s are a stop under, 0.42 under, 0.32 over and a stop over (light times time)
  const pass: PassLight = { seconds: 4, levelPercent: 100, iso: 400, stops: 0 };

  it('tells easy counts round the wanted level with the level that each gives (abs 1e-9 stops)', () => {
    const steps = countLadder(pass, 0, 60);
    expect(steps.map(({ seconds }) => seconds)).toEqual([2, 3, 5, 8]);
    for (const { seconds, stops } of steps) expect(stops).toBeCloseTo(Math.log2(seconds / 4), 9);
  });

  it('follows the wanted level, and leaves out what the frame does not hold', () => {
    expect(countLadder(pass, -1, 60).map(({ seconds }) => seconds)).toEqual([1, 2, 3]);
    expect(countLadder(pass, 0, 4).map(({ seconds }) => seconds)).toEqual([2, 3]);
    expect(countLadder(pass, -6, 60)).toEqual([]);
  });
});
