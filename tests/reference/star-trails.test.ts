import { describe, it } from 'vitest';
import {
  fixedRuleSeconds,
  longPixelRuleSeconds,
  onePixelSeconds,
  shortPixelRuleSeconds,
} from '../../core/camera/star-rules.ts';
import { siderealRadiansPerSecond, trailPixels } from '../../core/camera/star-trail.ts';
import { radiansFromDegrees } from '../../core/units/angle.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Star trails');

const geometry = 'f ω t cos δ / p; number computed';
const longForm = 'published pixel rule, long form; number computed';
const shortForm = 'published pixel rule, short form; number computed';
const trade = 'common practice, no published source';
const seconds = 's';

describe('how fast the sky turns', () => {
  const source = 'mean sidereal day of 86164.0905 s; number computed';
  it('6a: 7.292116e-5 rad/s (rel 1e-7), 15.04107 seconds of arc a second (abs 6e-6)', () => {
    const row = { id: '6a', source };
    const arcseconds = (siderealRadiansPerSecond * 180 * 3600) / Math.PI;
    check({
      ...row,
      claim: 'turn of the sky',
      unit: 'rad/s',
      expected: 7.292116e-5,
      ours: siderealRadiansPerSecond,
      tolerance: { relative: 1e-7 },
    });
    check({
      ...row,
      claim: 'turn of the sky',
      unit: 'arcsec/s',
      expected: 15.04107,
      ours: arcseconds,
      tolerance: { absolute: 6e-6 },
    });
  });
});

describe('trail in pixels', () => {
  it.each([
    ['6b', 24, 20, 4.3, 0, 8.14],
    ['6b', 24, 20, 4.3, 45, 5.7559],
    ['6b', 24, 20, 4.3, 60, 4.07],
    ['6c', 14, 30, 5.9, 0, 5.191],
    ['6d', 20, 15, 4.3, -29, 4.4496],
  ] as const)('%s: %d mm, %d s, %d µm, declination %d°: %d px (abs 1e-4)', (id, f, t, pitch, declination, expected) => {
    const ours = trailPixels(f, t, pitch, radiansFromDegrees(declination));
    const claim = `trail of a star, ${f} mm, ${t} s, ${pitch} µm, declination ${declination}°`;
    check({ id, claim, source: geometry, unit: 'px', expected, ours, tolerance: { absolute: 1e-4 } });
  });
});

describe('rules for the longest exposure', () => {
  it('6f: 500 over 24 mm is 20.83 s, and the trail of any lens 36.46 µm, 8.5 px of 4.3 µm (half of the last digit)', () => {
    const row = { id: '6f', source: `${trade}; number computed` };
    const allowed = fixedRuleSeconds(24);
    const claim = '500 rule, 24 mm on 36 x 24 mm';
    check({ ...row, claim, unit: seconds, expected: 20.83, ours: allowed, tolerance: { absolute: 0.005 } });
    for (const f of [14, 24, 135]) {
      const micrometres = trailPixels(f, fixedRuleSeconds(f), 1, 0);
      const drawn = `trail that the 500 rule leaves on the sensor, ${f} mm`;
      check({ ...row, claim: drawn, unit: 'µm', expected: 36.46, ours: micrometres, tolerance: { absolute: 0.005 } });
    }
    const pixels = trailPixels(24, allowed, 4.3, 0);
    const drawn = 'trail that the 500 rule leaves, 4.3 µm pixels';
    check({ ...row, id: 'T9', claim: drawn, unit: 'px', expected: 8.5, ours: pixels, tolerance: { absolute: 0.05 } });
  });

  it('6g: one pixel of drift, 24 mm and 4.3 µm: 2.4570 s (abs 1e-4), which is 13.7134 p/f (abs 5e-5)', () => {
    const row = { id: '6g', source: geometry };
    const claim = 'one pixel of drift, 24 mm, 4.3 µm';
    const tolerance = { absolute: 1e-4 };
    check({ ...row, claim, unit: seconds, expected: 2.457, ours: onePixelSeconds(24, 4.3, 0), tolerance });
    const factor = onePixelSeconds(1, 1, 0);
    const many = 'one pixel of drift as a multiple of p/f';
    check({ ...row, claim: many, unit: 's mm/µm', expected: 13.7134, ours: factor, tolerance: { absolute: 5e-5 } });
  });

  const lens = (fNumber: number, pitchMicrometres: number, focalLengthMm: number) => ({
    fNumber,
    pitchMicrometres,
    focalLengthMm,
    declinationRadians: 0,
  });

  it('6h, 6i: both pixel rules at f/2.8, 4.3 µm, 24 mm, and the trails that they leave (half of the last digit)', () => {
    const at = 'f/2.8, 4.3 µm, 24 mm';
    const long = longPixelRuleSeconds(lens(2.8, 4.3, 24));
    const short = shortPixelRuleSeconds(24, 2.8, 4.3);
    const rows = [
      ['6h', 'long form', longForm, long, 4.526, 1.84],
      ['6i', 'short form', shortForm, short, 9.458, 3.85],
    ] as const;
    for (const [id, form, source, ours, expected, pixels] of rows) {
      const row = { id, source };
      const claim = `pixel rule, ${form}, ${at}`;
      check({ ...row, claim, unit: seconds, expected, ours, tolerance: { absolute: 5.1e-4 } });
      const trail = trailPixels(24, ours, 4.3, 0);
      const drawn = `trail that the ${form} leaves, ${at}`;
      check({ ...row, claim: drawn, unit: 'px', expected: pixels, ours: trail, tolerance: { absolute: 0.005 } });
    }
  });

  it('6j: the worked example of the short form, f/4, 3.75 µm, 200 mm: 1.26 s (abs 0.005 s)', () => {
    const ours = shortPixelRuleSeconds(200, 4, 3.75);
    const claim = 'pixel rule, short form, worked example f/4, 3.75 µm, 200 mm';
    const source = 'published worked example of the short form';
    check({ id: '6j', claim, source, unit: seconds, expected: 1.26, ours, tolerance: { absolute: 0.005 } });
  });

  it.each([
    [2.8, 5.9, 14, 9.254, 19.643],
    [1.8, 4.3, 20, 4.566, 9.6],
    [2.8, 6, 35, 3.801, 7.943],
  ])('6k: f/%d, %d µm, %d mm: long %d s, short %d s (abs 5e-4 s)', (fNumber, pitch, f, long, short) => {
    const row = { id: '6k', unit: seconds, tolerance: { absolute: 5.1e-4 } };
    const at = `f/${fNumber}, ${pitch} µm, ${f} mm`;
    const ours = longPixelRuleSeconds(lens(fNumber, pitch, f));
    check({ ...row, claim: `pixel rule, long form, ${at}`, source: longForm, expected: long, ours });
    const shorter = shortPixelRuleSeconds(f, fNumber, pitch);
    check({ ...row, claim: `pixel rule, short form, ${at}`, source: shortForm, expected: short, ours: shorter });
  });

  it('T10: the short form allows about 2.1 times the long one (abs 0.05)', () => {
    const ours = shortPixelRuleSeconds(24, 2.8, 4.3) / longPixelRuleSeconds(lens(2.8, 4.3, 24));
    const claim = 'short over long form, f/2.8, 4.3 µm, 24 mm';
    const source = 'published pixel rules, both forms; number computed';
    check({ id: 'T10', claim, source, unit: '', expected: 2.1, ours, tolerance: { absolute: 0.05 } });
  });
});

// trade notes 2.4; 24 megapixels on 36 x 24 mm are pixels of 6 µm
describe('times that the trade tells', () => {
  const row = { id: 'trade 2.4', source: trade, unit: seconds, tolerance: { absolute: 0.51 } };
  it.each([
    [14, 36, 21],
    [15, 33, 20],
    [18, 28, 17],
    [20, 25, 15],
    [24, 21, 12.5],
    [35, 14, 8.6],
    [50, 10, 6],
  ])('%d mm: 500 rule %d s, 300 rule %d s (abs 0.5 s, whole seconds)', (f, by500, by300) => {
    check({ ...row, claim: `500 rule as told, ${f} mm`, expected: by500, ours: fixedRuleSeconds(f) });
    check({ ...row, claim: `300 rule as told, ${f} mm`, expected: by300, ours: fixedRuleSeconds(f, 300) });
  });

  it.each([
    [14, 2.8, 20],
    [15, 2.8, 18],
    [18, 2.8, 15],
    [20, 1.8, 12],
    [24, 2, 10.5],
  ])('%d mm f/%d: pixel rule %d s (abs 0.6 s: cut, not rounded)', (f, fNumber, expected) => {
    const ours = shortPixelRuleSeconds(f, fNumber, 6);
    const claim = `pixel rule, short form, as told for 24 megapixels, ${f} mm f/${fNumber}`;
    check({ ...row, claim, expected, ours, tolerance: { absolute: 0.6 } });
  });
});
