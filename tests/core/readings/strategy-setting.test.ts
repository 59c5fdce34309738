import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PassLight } from '../../../core/readings/count.ts';
import { densityOf, isNeutral } from '../../../core/readings/strategy-density.ts';
import { countedSetting, type LampSetting, standingSetting } from '../../../core/readings/strategy-setting.ts';

const seed = 11;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** A pass at full level for a second, from far too dark to 20 stops too bright. */
const full: fc.Arbitrary<PassLight> = fc.record({
  seconds: fc.constant(1),
  levelPercent: fc.constant(100),
  iso: fc.constant(400),
  stops: between(-12, 20),
});
const lowest = fc.constantFrom(0, 0.1, 1, 5, 25, 100);
const wanted = between(-4, 1);
const most = 9;

/** What comes of a setting: light is level times time, and a stop of density halves it. */
const missOf = ({ stops }: PassLight, { levelPercent, ndStops, seconds }: LampSetting, wantedStops: number): number =>
  stops + Math.log2((levelPercent / 100) * seconds) - ndStops - wantedStops;

describe('countedSetting', () => {
  it('in a frame too short for a spoken count the count is the frame, and the level makes up for it', () => {
    const light = { seconds: 1, levelPercent: 100, iso: 400, stops: 4 };
    const room = { presentPercent: 50, mostSeconds: 0.5, easyMostSeconds: 0.5, strokeSeconds: null };
    const setting = countedSetting(light, 0, room, { lowestLevelPercent: 1, mostNdStops: most });
    // four stops too bright for a second at full: half a second at an eighth
    expect(setting).toEqual({ levelPercent: 12.5, ndStops: 0, seconds: 0.5 });
  });
});

describe(`settings of lamps (400 each, seed ${seed})`, () => {
  it('standing: within a quarter of a stop, unless the lamp is at the end of what it can do', () => {
    fc.assert(
      fc.property(full, wanted, lowest, between(1, 60), (light, wantedStops, lowestLevelPercent, shutter) => {
        const setting = standingSetting(light, wantedStops, shutter, { lowestLevelPercent, mostNdStops: most });
        const miss = missOf(light, setting, wantedStops);
        const { levelPercent, ndStops, seconds } = setting;
        expect(seconds).toBe(shutter);
        expect(levelPercent).toBeLessThanOrEqual(100);
        expect(levelPercent).toBeGreaterThanOrEqual(lowestLevelPercent);
        expect(Number.isInteger(2 * ndStops) && ndStops >= 0 && ndStops <= most).toBe(true);
        // three figures of a level are a hundredth of a stop at most
        if (miss < -0.26) expect([levelPercent, ndStops]).toEqual([100, 0]);
        if (miss > 0.26) expect([levelPercent, ndStops]).toEqual([lowestLevelPercent, most]);
      }),
      { seed, numRuns: 400 },
    );
  });

  it('counted: a count within the frame, within 0.3 stop, unless the lamp is at the end of what it can do', () => {
    const room = fc.record({
      presentPercent: fc.constantFrom(1, 20, 100),
      mostSeconds: fc.constantFrom(6, 12, 30, 900),
      easyMostSeconds: fc.constantFrom(3, 8, 900),
      strokeSeconds: fc.constant(null),
    });
    fc.assert(
      fc.property(full, wanted, lowest, room, (light, wantedStops, lowestLevelPercent, within) => {
        const presentPercent = Math.max(within.presentPercent, lowestLevelPercent);
        const range = { lowestLevelPercent, mostNdStops: most };
        const setting = countedSetting(light, wantedStops, { ...within, presentPercent }, range);
        const miss = missOf(light, setting, wantedStops);
        const { levelPercent, ndStops, seconds } = setting;
        expect(seconds).toBeGreaterThanOrEqual(1);
        expect(seconds).toBeLessThanOrEqual(within.mostSeconds);
        if (miss < -0.3) expect([levelPercent, ndStops, seconds]).toEqual([100, 0, within.mostSeconds]);
        if (miss > 0.3) expect([levelPercent, ndStops, seconds]).toEqual([lowestLevelPercent, most, 1]);
      }),
      { seed, numRuns: 400 },
    );
  });

  it('a stroke that is walked takes as long as it takes, and its level follows (abs 0.01 stop)', () => {
    const light: PassLight = { seconds: 1, levelPercent: 100, iso: 400, stops: -2 };
    const room = { presentPercent: 100, mostSeconds: 900, easyMostSeconds: 900, strokeSeconds: 48 };
    const setting = countedSetting(light, -1.5, room, { lowestLevelPercent: 1, mostNdStops: most });
    expect(setting.seconds).toBe(48);
    expect(Math.abs(missOf(light, setting, -1.5))).toBeLessThan(0.01);
    expect(
      countedSetting(light, -1.5, { ...room, mostSeconds: 20 }, { lowestLevelPercent: 1, mostNdStops: most }).seconds,
    ).toBe(20);
  });

  it.each([0, 0.5, 1, 1.5, 2.5, 3, 4.5, 8.5, 9])(
    'sheets of %d stops of density let 2^-%d through, four at most',
    (stops) => {
      const sheets = densityOf(stops);
      expect(sheets.reduce((share, { transmission }) => share * transmission, 1)).toBeCloseTo(2 ** -stops, 12);
      expect(sheets.length).toBeLessThanOrEqual(4);
      expect(sheets.every(isNeutral)).toBe(true);
    },
  );
});
