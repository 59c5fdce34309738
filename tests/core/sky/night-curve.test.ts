import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossingsOf, highestOf, nightCurve, spansOver, spansUnder } from '../../../core/sky/night-curve.ts';
import { type Span, spansInBoth } from '../../../core/sky/night-spans.ts';
import { totalSeconds } from './total-seconds.ts';

const day = 86_400_000;
/** A body's path: highest at `peak`, one turn a day. */
const wave = (peak: number) => (at: number) => Math.cos((2 * Math.PI * (at - peak)) / day);
const peaks = fc.double({ min: 0.1 * day, max: 0.9 * day, noNaN: true });

describe('nightCurve', () => {
  it('finds a wave’s highest moment between its points (1 s)', () => {
    fc.assert(
      fc.property(peaks, (peak) => {
        expect(Math.abs(highestOf(nightCurve(wave(peak), 0, day, 32)) - peak)).toBeLessThan(1000);
      }),
      { numRuns: 200, seed: 20 },
    );
  });

  it('finds both crossings of a level that the wave passes for five minutes only (0.2 s)', () => {
    const half = 150_000;
    fc.assert(
      fc.property(peaks, (peak) => {
        const curve = nightCurve(wave(peak), 0, day, 32);
        const crossings = crossingsOf(curve, Math.cos((2 * Math.PI * half) / day));
        expect(crossings.map(({ rises }) => rises)).toEqual([true, false]);
        expect(Math.abs((crossings[0]?.milliseconds ?? 0) - (peak - half))).toBeLessThan(200);
        expect(Math.abs((crossings[1]?.milliseconds ?? 0) - (peak + half))).toBeLessThan(200);
      }),
      { numRuns: 200, seed: 21 },
    );
  });

  it('splits all of the time into over and under, whatever the level', () => {
    fc.assert(
      fc.property(peaks, fc.double({ min: -1.2, max: 1.2, noNaN: true }), (peak, level) => {
        const curve = nightCurve(wave(peak), 0, day, 32);
        const [over, under] = [spansOver(curve, level), spansUnder(curve, level)];
        expect(totalSeconds(over) + totalSeconds(under)).toBeCloseTo(day / 1000, 0);
        expect(totalSeconds(spansInBoth(over, under))).toBeLessThan(1);
        for (const { startMilliseconds, endMilliseconds } of over)
          expect(wave(peak)((startMilliseconds + endMilliseconds) / 2)).toBeGreaterThan(level);
      }),
      { numRuns: 200, seed: 22 },
    );
  });

  it('has no turn on a straight line, and crosses it once', () => {
    const curve = nightCurve((at) => at, 0, 100_000, 5);
    expect(curve.points).toHaveLength(6);
    expect(crossingsOf(curve, 31_000)).toHaveLength(1);
    expect(
      crossingsOf(
        nightCurve(() => 1, 0, 100, 4),
        1,
      ),
    ).toEqual([]);
  });
});

describe('spansInBoth', () => {
  const span = (startMilliseconds: number, endMilliseconds: number): Span => ({ startMilliseconds, endMilliseconds });
  it('keeps what is in both, and nothing that only touches', () => {
    expect(spansInBoth([span(0, 10), span(20, 30)], [span(5, 25)])).toEqual([span(5, 10), span(20, 25)]);
    expect(spansInBoth([span(0, 10)], [span(10, 20)])).toEqual([]);
    expect(spansInBoth([], [span(0, 1)])).toEqual([]);
  });
});
