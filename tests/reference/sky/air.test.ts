import { describe, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { airMass, skyAirMass } from '../../../core/sky/air-mass.ts';
import { pointTransmittance } from '../../../core/sky/extinction.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { accuracySection } from '../support/accuracy.ts';

const { check } = accuracySection('Air');
const sine = (degrees: number): number => Math.sin(radiansFromDegrees(degrees));

describe('airMass', () => {
  it.each([
    [0, 38.0868],
    [1, 26.2595],
    [5, 10.3164],
    [10, 5.5841],
  ])('5.1: at %d degrees the table has %d (rel 0.5 %)', (degrees, expected) => {
    const source = 'Kasten and Young 1989, table II';
    const ours = airMass(sine(degrees));
    check({
      id: '5.1b',
      claim: `air mass at ${degrees}°`,
      source,
      unit: '',
      expected,
      ours,
      tolerance: { relative: 0.005 },
    });
  });

  it.each([
    [0, 37.9196],
    [0.1, 36.467],
    [1, 26.3106],
    [5, 10.3058],
    [10, 5.586],
    [20, 2.9031],
    [30, 1.9943],
    [45, 1.4126],
    [60, 1.154],
    [90, 0.9997],
  ])('5.1: the formula gives %d degrees %d (rel 1e-4)', (degrees, expected) => {
    const source = 'Kasten and Young 1989, formula; 0.1° and 10° as an open library tests them, others computed apart';
    const claim = `air mass by formula, ${degrees}°`;
    const ours = airMass(sine(degrees));
    check({ id: '5.1c', claim, source, unit: '', expected, ours, tolerance: { relative: 1e-4 } });
  });
});

describe('skyAirMass', () => {
  it.each([
    [60, 1.1471],
    [45, 1.3868],
    [30, 1.8898],
    [20, 2.5624],
    [10, 3.8084],
    [0, 5],
  ])('5.1: diffuse light at %d degrees passes %d (rel 1e-4)', (degrees, expected) => {
    const source = 'Krisciunas and Schaefer 1991, eq. 3; number computed';
    const claim = `air mass of diffuse light, ${degrees}°`;
    const ours = skyAirMass(sine(degrees));
    check({ id: '5.1d', claim, source, unit: '', expected, ours, tolerance: { relative: 1e-4 } });
  });
});

describe('pointTransmittance', () => {
  it.each([
    [45, 0.243],
    [20, 0.499],
    [10, 0.961],
    [5, 1.773],
    [30, 0.34],
    [2, 3.34],
    [0, 6.52],
  ])('5.1: k = 0.172 dims white light at %d degrees by %d mag (abs 0.005)', (degrees, expected) => {
    const through = pointTransmittance({ extinctionMagnitudes: 0.172, thinCloudDepth: 0 }, sine(degrees));
    const ours = -2.5 * Math.log10(luminanceOfLinearSrgb(through));
    const source = 'k of Krisciunas and Schaefer 1991, air mass of Kasten and Young 1989; number computed';
    const claim = `dimming at ${degrees}°`;
    check({ id: '5.1e', claim, source, unit: 'mag', expected, ours, tolerance: { absolute: 0.005 } });
  });
});
