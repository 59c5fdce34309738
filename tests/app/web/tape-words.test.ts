import { describe, expect, it } from 'vitest';
import { toStep } from '../../../app/web/groundplan/to-step.ts';
import { tapeWords } from '../../../app/web/ui/tape-words.ts';

describe('tapeWords', () => {
  it('says length, paces and bearing on level ground, and no rise', () => {
    expect(tapeWords({ from: [0, 0, 0], to: [3, 4, 0] }, 0.75)).toBe('5.00 m · 7 paces · 37° from the scene’s north');
  });
  it('counts paces as long as the user’s own', () => {
    expect(tapeWords({ from: [0, 0, 0], to: [3, 4, 0] }, 1)).toContain(' 5 paces ');
  });
  it('says the rise and the way over the ground where there is one', () => {
    expect(tapeWords({ from: [0, 0, 1], to: [0, 0.75, 0] }, 0.75)).toBe(
      '1.25 m · 1 pace · 0° from the scene’s north · −1.00 m up, 0.75 m over the ground',
    );
  });
  it('says what to do before it is laid', () => {
    expect(tapeWords({ from: [0, 0, 0], to: null }, 0.75)).toMatch(/^Press/);
  });
});

describe('toStep', () => {
  it('finds the nearest step without a tail', () => {
    expect(toStep(2.349999, 0.1)).toBe(2.3);
    expect(toStep(0.30000000004, 0.01)).toBe(0.3);
    expect(Object.is(toStep(-0.001, 0.1), 0)).toBe(true);
    expect(toStep(52.6, 15)).toBe(60);
  });
});
