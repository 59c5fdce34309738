import { describe, expect, it } from 'vitest';
import { displayFromMidGreyRatio, midGreyLinear } from '../../../core/camera/response.ts';

describe('displayFromMidGreyRatio', () => {
  it('is straight up to 0.6: mid-grey is 0.18, one stop over 0.36 (abs 1e-12)', () => {
    expect(displayFromMidGreyRatio(1)).toBeCloseTo(midGreyLinear, 12);
    expect(displayFromMidGreyRatio(2)).toBeCloseTo(0.36, 12);
    expect(displayFromMidGreyRatio(0)).toBe(0);
    expect(displayFromMidGreyRatio(-3)).toBe(0);
  });
  it('never falls, never jumps, and keeps its slope where the shoulder starts (abs 1e-3)', () => {
    const step = 1e-4;
    let [before, least, most] = [0, 0, 0];
    for (let v = step; v < 9; v += step) {
      const now = displayFromMidGreyRatio(v);
      [least, most] = [Math.min(least, now - before), Math.max(most, now - before)];
      before = now;
    }
    expect(least).toBeGreaterThanOrEqual(-1e-12);
    expect(most).toBeLessThanOrEqual(midGreyLinear * step * 1.001);
    const joint = 0.6 / midGreyLinear;
    const slope = (displayFromMidGreyRatio(joint + step) - displayFromMidGreyRatio(joint)) / step;
    expect(Math.abs(slope - midGreyLinear)).toBeLessThanOrEqual(1e-3);
  });
  // saturation is 7.8 times mid-grey: 78/S over 10/S, ISO 12232
  it('is white exactly from saturation on: 7.8 times mid-grey (abs 1e-12), and not before', () => {
    expect(displayFromMidGreyRatio(7.8)).toBeCloseTo(1, 12);
    expect(displayFromMidGreyRatio(100)).toBeCloseTo(1, 12);
    expect(displayFromMidGreyRatio(7.5)).toBeLessThan(1 - 1e-4);
  });
});
