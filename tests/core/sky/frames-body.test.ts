import { describe, expect, it } from 'vitest';
import { trueBearing, wrapRadians } from '../../../core/sky/frames-body.ts';

describe('wrapRadians', () => {
  it('is never a whole turn, however little is lacking', () => {
    for (const radians of [-1e-20, -1e-17, 0, 2 * Math.PI, -2 * Math.PI, 14 * Math.PI]) {
      expect(wrapRadians(radians)).toBeGreaterThanOrEqual(0);
      expect(wrapRadians(radians)).toBeLessThan(2 * Math.PI);
    }
    expect(wrapRadians(-1e-20)).toBe(0);
    expect(wrapRadians(-Math.PI / 2)).toBeCloseTo((3 * Math.PI) / 2, 12);
  });
});

describe('trueBearing', () => {
  it('is clockwise from true north, and 0 straight up and down, wherever the scene’s north points', () => {
    expect(trueBearing([1, 0.3, 0], 0)).toBeCloseTo(Math.PI / 2, 12);
    expect(trueBearing([0, 0, 1], 0.5)).toBeCloseTo(Math.PI + 0.5, 12);
    for (const up of [1, -1]) expect(trueBearing([0, up, 0], 2)).toBe(0);
  });
});
