import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { angleBetween } from '../../../core/geometry/vec.ts';
import type { Sum } from '../../../core/sky/altitude-table.ts';
import { luminanceOfNanolambert, surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';
import { meanMoonDistanceKm } from '../../../core/sky/moon-light.ts';
import { moonSky } from '../../../core/sky/moon-sky.ts';
import { moonScatter } from '../../../core/sky/moonlit-sky.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { directionAt, fakeSky } from '../../core/sky/fake-sky.ts';
import { accuracySection } from '../support/accuracy.ts';

const { check } = accuracySection('Moonlight');

describe('moonlit sky', () => {
  it.each([
    [30, 665836],
    [60, 344772],
    [90, 250775],
    [120, 301516],
  ])('5.2s: scattering at %d degrees is %d (rel 1e-5)', (degrees, expected) => {
    const { air, haze } = moonScatter(radiansFromDegrees(degrees));
    const source = 'Krisciunas and Schaefer 1991, eqs. 17, 18; number computed';
    const claim = `scattering at ${degrees}°`;
    check({ id: '5.2s', claim, source, unit: '', expected, ours: air + haze, tolerance: { relative: 1e-5 } });
  });

  /** What the sky of the product has of moonlight, the moon due north and one looking along that bearing: nanolamberts. */
  const nanolamberts = (phase: number, turn: number, moonZenith: number, zenith: number, k: number): number => {
    const state = fakeSky({
      moon: [90 - moonZenith, 0],
      phaseDegrees: phase,
      distanceKm: meanMoonDistanceKm,
      input: { extinctionMagnitudes: k },
    });
    const toward = directionAt(90 - zenith, 0);
    expect(angleBetween(toward, state.moon.towardSeen)).toBeCloseTo(radiansFromDegrees(turn), 9);
    const sum: Sum = [0, 0, 0];
    moonSky(state, false)?.(toward, sum);
    return luminanceOfLinearSrgb(sum) / luminanceOfNanolambert;
  };

  it.each([
    ['5.2o', 0, 45, 1586.04, -3.3094, 18.278],
    ['5.2p', 90, 60, 99.173, -0.883, 20.704],
  ])(
    '%s: phase %d, moon %d degrees off the zenith: %d nL (rel 1e-4), %d mag brighter, %d in all (abs 1e-3)',
    (id, a, turn, nl, delta, total) => {
      const source = 'Krisciunas and Schaefer 1991, eqs. 2, 15, 22; dark zenith 21.587, k 0.172; number computed';
      const ours = nanolamberts(a, turn, turn, 0, 0.172);
      const dark = 79.006;
      check({
        id,
        claim: 'moonlight straight up',
        source,
        unit: 'nL',
        expected: nl,
        ours,
        tolerance: { relative: 1e-4 },
      });
      const change = -2.5 * Math.log10((dark + ours) / dark);
      check({
        id,
        claim: 'change straight up',
        source,
        unit: 'mag',
        expected: delta,
        ours: change,
        tolerance: { absolute: 1e-3 },
      });
      const all = 21.587 + change;
      check({
        id,
        claim: 'sky straight up',
        source,
        unit: 'mag/arcsec²',
        expected: total,
        ours: all,
        tolerance: { absolute: 1e-3 },
      });
    },
  );

  it('sky 4.5: zenith distances 20 and 70, 50 apart, phase angle 45, k 0.15: V = 19.855 (abs 0.01)', () => {
    // the example that a public implementation of the paper documents
    const luminance = nanolamberts(45, 50, 70, 20, 0.15) * luminanceOfNanolambert;
    const ours = surfaceMagnitudeFromLuminance(luminance);
    const source = 'documented example of a public implementation of Krisciunas and Schaefer 1991';
    check({
      id: 'sky 4.5',
      claim: 'moonlit sky',
      source,
      unit: 'mag/arcsec²',
      expected: 19.855,
      ours,
      tolerance: { absolute: 0.01 },
    });
  });

  it.each([
    [60, 17.89],
    [30, 18.73],
    [15, 19.18],
  ])('sky 4.5: zenith under a full moon at %d degrees: %d (abs 0.01)', (altitude, expected) => {
    const luminance = nanolamberts(0, 90 - altitude, 90 - altitude, 0, 0.172) * luminanceOfNanolambert;
    const ours = surfaceMagnitudeFromLuminance(luminance);
    const source = 'Krisciunas and Schaefer 1991; number computed apart';
    const claim = `zenith, full moon at ${altitude}°`;
    check({ id: 'sky 4.5', claim, source, unit: 'mag/arcsec²', expected, ours, tolerance: { absolute: 0.01 } });
  });
});
