import { describe, expect, it } from 'vitest';
import { coneSolidAngle, exponentFromHalfPeak } from '../../core/photometry/beam.ts';
import { degreesFromRadians, radiansFromDegrees } from '../../core/units/angle.ts';
import { relativeError } from '../core/support/errors.ts';
import { accuracySection } from './support/accuracy.ts';
import { candela, thousandLumens } from './support/lamps.ts';

// Rows 1.1d to 1.1f of the check values.
const { check } = accuracySection('Photometry');
const firstPrinciples = 'first principles, computed';

describe('cones and lobes', () => {
  it.each([
    [10, 0.023909, 41824.5],
    [20, 0.095456, 10476.1],
    [30, 0.214094, 4670.84],
    [40, 0.378922, 2639.06],
    [60, 0.841787, 1187.95],
    [90, 1.840302, 543.389],
    [120, Math.PI, 318.31],
  ])('1.1d: an even cone of %d degrees is %d sr (abs 5e-7) and gives %d cd (rel 1e-5)', (degrees, sr, expected) => {
    const row = { id: '1.1d', source: `2 pi (1 - cos a/2): ${firstPrinciples}` };
    const half = radiansFromDegrees(degrees / 2);
    check({
      ...row,
      claim: `solid angle of a cone of ${degrees} degrees`,
      unit: 'sr',
      expected: sr,
      ours: coneSolidAngle(Math.cos(half)),
      tolerance: { absolute: 5.1e-7 },
    });
    const torch = thousandLumens({ kind: 'torch', beam: { shape: 'flood', degrees } });
    const tolerance = { relative: 1e-5 };
    check({
      ...row,
      claim: `even cone of ${degrees} degrees, 1000 lm`,
      unit: 'cd',
      expected,
      ours: candela(torch, 0),
      tolerance,
    });
    expect(relativeError(candela(torch, half * 0.99), candela(torch, 0))).toBeLessThanOrEqual(1e-12);
    expect(candela(torch, half * 1.01)).toBe(0);
  });

  it.each([
    [1, 318.31],
    [2, 477.465],
    [4, 795.775],
    [10, 1750.7],
    [20, 3342.25],
    [50, 8116.9],
  ])(
    '1.1e: a lobe cos^%d of 1000 lm peaks at %d cd (rel 1e-5) and falls as that power (rel 1e-9)',
    (exponent, expected) => {
      const degrees = degreesFromRadians(2 * Math.acos(0.5 ** (1 / exponent)));
      const softbox = thousandLumens({ kind: 'torch', beam: { shape: 'lobe', degrees } });
      check({
        id: '1.1e',
        claim: `lobe cos^${exponent} of 1000 lm`,
        source: `(n + 1) flux / 2 pi: ${firstPrinciples}`,
        unit: 'cd',
        expected,
        ours: candela(softbox, 0),
        tolerance: { relative: 1e-5 },
      });
      expect(relativeError(candela(softbox, 0.3), candela(softbox, 0) * Math.cos(0.3) ** exponent)).toBeLessThan(1e-9);
    },
  );

  it.each([
    [5, 181.806],
    [10, 45.2776],
    [15, 19.9937],
    [30, 4.8188],
    [45, 2],
    [60, 1],
  ])('1.1f: half peak at %d degrees needs the exponent %d (rel 1e-5)', (degrees, expected) => {
    check({
      id: '1.1f',
      claim: `exponent of a lobe with half its peak at ${degrees} degrees`,
      source: `ln 0.5 / ln cos: ${firstPrinciples}`,
      unit: '',
      expected,
      ours: exponentFromHalfPeak(radiansFromDegrees(degrees)),
      tolerance: { relative: 1e-5 },
    });
  });
});
