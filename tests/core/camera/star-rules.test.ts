import { describe, expect, it } from 'vitest';
import { fixedRuleSeconds, longPixelRuleSeconds, onePixelSeconds, starRules } from '../../../core/camera/star-rules.ts';
import { trailPixels } from '../../../core/camera/star-trail.ts';
import { relativeError } from '../support/errors.ts';

const lens = {
  focalLengthMm: 24,
  fNumber: 2.8,
  pitchMicrometres: 4.3,
  sensorDiagonalMm: Math.hypot(36, 24),
  declinationRadians: 0,
};
const secondsOf = (rules: ReturnType<typeof starRules>) => rules.map(({ seconds }) => seconds);

describe('starRules', () => {
  it('lists four rules under different names and formulas, strictest first for this lens, each with its true trail', () => {
    const rules = starRules(lens);
    expect(new Set(rules.map(({ name }) => name)).size).toBe(4);
    expect(new Set(rules.map(({ formula }) => formula)).size).toBe(4);
    expect(secondsOf(rules)).toEqual([...secondsOf(rules)].sort((a, b) => a - b));
    for (const rule of rules) expect(rule.trailPixels).toBe(trailPixels(24, rule.seconds, 4.3, 0));
    expect(rules[0]?.trailPixels).toBeCloseTo(1, 12);
  });

  it('at 60 degrees of declination the rules that know it allow twice as long, the others draw half as far (rel 1e-12)', () => {
    const equator = starRules(lens);
    const north = starRules({ ...lens, declinationRadians: Math.PI / 3 });
    const ratios = equator.map(({ seconds }, i) => (north[i]?.seconds ?? Number.NaN) / seconds);
    for (const [i, factor] of [2, 2, 1, 1].entries())
      expect(relativeError(ratios[i] as number, factor)).toBeLessThanOrEqual(1e-12);
    expect(relativeError((north[3]?.trailPixels ?? 0) * 2, equator[3]?.trailPixels ?? 0)).toBeLessThanOrEqual(1e-12);
  });

  it('the 500 rule counts in full-frame terms: half the sensor, half the seconds (rel 1e-12)', () => {
    const small = starRules({ ...lens, sensorDiagonalMm: lens.sensorDiagonalMm / 2 });
    expect(relativeError(small[3]?.seconds ?? 0, fixedRuleSeconds(48))).toBeLessThanOrEqual(1e-12);
  });
});

describe('longPixelRuleSeconds', () => {
  it('grows with its sharpness factor and never falls below one pixel of drift (13.7 against 13.7134: 0.1 %)', () => {
    expect(longPixelRuleSeconds(lens, 3) / longPixelRuleSeconds(lens)).toBeCloseTo(3, 12);
    for (const focalLengthMm of [14, 50, 200])
      expect(longPixelRuleSeconds({ ...lens, focalLengthMm })).toBeGreaterThan(
        onePixelSeconds(focalLengthMm, 4.3, 0) * 0.999,
      );
  });
});
