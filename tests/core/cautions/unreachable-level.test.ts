import { describe, expect, it } from 'vitest';
import { cautionsFor, find, wallLitBy } from '../support/cautions.ts';
import type { OnePass } from '../support/scenes.ts';

/** In a frame of 10 s; the lamp has one level. */
const litBy = (stops: number, seconds: number): OnePass => wallLitBy(stops, seconds, { seconds: 10 });

// night level 1.5 under mid-grey; the shortest count is 1 s (common practice, no published source)
describe('unreachable-level', () => {
  it.each([
    [-1.02, false],
    [-0.98, true],
  ])('%d stops after the shortest count at the only level, half a stop over the night level: %s', (stops, told) => {
    const caution = find(litBy(stops, 1), 'unreachable-level');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ severity: 'warning', limit: 0.5 });
      expect(caution.value).toBeCloseTo(stops + 1.5, 2);
      expect(caution.message).toMatch(/Step back to [\d.]+ m\. Or hang 0\.5 stops of cloth/);
    }
  });
  it('a longer count that a shorter one would cure is none', () => {
    expect(find(litBy(1, 6), 'unreachable-level')).toBeUndefined();
  });
  it.each([
    [-1.98, false],
    [-2.02, true],
  ])('%d stops with all that the frame can hold: %s', (stops, told) => {
    // 10 s are a marking: it is really 10.08 s, lit all the time
    const what = litBy(stops, 2 ** (10 / 3));
    const caution = find({ ...what, pass: { ...what.pass, off: 10 } }, 'unreachable-level');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ limit: -0.5 });
      expect(caution.message).toMatch(/too dark\. Come to [\d.]+ m\. Or raise the ISO/);
    }
  });
  it('a light that is kept weak, more than a stop under what it could give, is left alone', () => {
    expect(find(litBy(-3.5, 6), 'unreachable-level')).toBeDefined();
    expect(find(litBy(-3.5, 4), 'unreachable-level')).toBeUndefined();
  });
  it('is not said beside burnt or too dark, which give the same advice', () => {
    for (const stops of [4, -6]) {
      const codes = cautionsFor(litBy(stops, stops > 0 ? 1 : 10)).map(({ code }) => code);
      expect(codes).toContain(stops > 0 ? 'burnt' : 'too-dark');
      expect(codes).not.toContain('unreachable-level');
    }
  });
});
