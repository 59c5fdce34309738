import { describe, it } from 'vitest';
import { quietAirglowS10 } from '../../../core/sky/airglow.ts';
import {
  luminanceFromSurfaceMagnitude,
  luminanceOfNanolambert,
  luminanceOfS10,
  luxFromMagnitude,
  magnitudeFromLux,
  surfaceMagnitudeFromLuminance,
} from '../../../core/sky/magnitudes.ts';
import { scatteredS10 } from '../../../core/sky/site-darkness.ts';
import { kelvinFromBMinusV } from '../../../core/sky/star-colour.ts';
import { zodiacalS10 } from '../../../core/sky/zodiacal.ts';
import { accuracySection } from '../support/accuracy.ts';

const { check } = accuracySection('Night sky');

describe('magnitudes', () => {
  it.each([
    [22, 1.712e-4],
    [21.5, 2.713e-4],
    [21, 4.3e-4],
    [20, 1.08e-3],
    [19, 2.713e-3],
    [18, 6.814e-3],
  ])('5.3a: %d mag/arcsec2 is %d cd/m2 (rel 0.2 %)', (magnitude, expected) => {
    const source = '10.8e4 x 10^(-0.4 mu), as makers of sky meters print it';
    const ours = luminanceFromSurfaceMagnitude(magnitude);
    const claim = `${magnitude} mag/arcsec²`;
    check({ id: '5.3a', claim, source, unit: 'cd/m²', expected, ours, tolerance: { relative: 0.002 } });
  });

  it.each([
    [22, 54.008],
    [21, 135.663],
    [18, 2150.1],
  ])('5.3b: %d mag/arcsec2 is %d nL (rel 0.5 %)', (magnitude, expected) => {
    const ours = luminanceFromSurfaceMagnitude(magnitude) / luminanceOfNanolambert;
    const source = 'Krisciunas and Schaefer 1991, eq. 1; the two laws part by 0.44 %';
    const claim = `${magnitude} mag/arcsec² in nanolamberts`;
    check({ id: '5.3b', claim, source, unit: 'nL', expected, ours, tolerance: { relative: 0.005 } });
  });

  it.each([
    [22, 0.538],
    [21.587, 0.787],
  ])('5.3c: an even sky of %d gives %d mlx (rel 0.2 %)', (magnitude, expected) => {
    const ours = 1000 * Math.PI * luminanceFromSurfaceMagnitude(magnitude);
    const source = 'E = pi L; number computed';
    const claim = `even sky of ${magnitude}`;
    check({ id: '5.3c', claim, source, unit: 'mlx', expected, ours, tolerance: { relative: 0.002 } });
  });

  it('5.3d: 1 S10 is 27.78 mag/arcsec2 (abs 0.005); 145 + 60 + 15 S10 are 21.9 (abs 0.05)', () => {
    const one = surfaceMagnitudeFromLuminance(luminanceOfS10);
    const source = 'Benn and Ellison 1998';
    const row = { id: '5.3d', source, unit: 'mag/arcsec²' };
    check({ ...row, claim: '1 S10', expected: 27.78, ours: one, tolerance: { absolute: 0.005 } });
    const parts = quietAirglowS10 + zodiacalS10(1, 0) + scatteredS10;
    const ours = surfaceMagnitudeFromLuminance(parts * luminanceOfS10);
    check({ ...row, claim: 'budget of a dark zenith', expected: 21.9, ours, tolerance: { absolute: 0.05 } });
  });

  it('a star of V 0 gives 2.54e-6 lx (rel 1e-9), and lux tells magnitude again (abs 1e-12)', () => {
    const source = 'Allen, Astrophysical quantities, from memory';
    const ours = luxFromMagnitude(0);
    check({
      id: 'sky 4.0',
      claim: 'star of V 0',
      source,
      unit: 'lx',
      expected: 2.54e-6,
      ours,
      tolerance: { relative: 1e-9 },
    });
    const back = magnitudeFromLux(luxFromMagnitude(-12.73));
    const again = 'law and its inverse';
    check({
      id: 'sky 4.0',
      claim: 'there and back',
      source: again,
      unit: 'mag',
      expected: -12.73,
      ours: back,
      tolerance: { absolute: 1e-12 },
    });
  });

  it('sky 4.1: a star of V 0 on one pixel of 6 um at 14 mm is 13.8 cd/m2 (rel 0.5 %)', () => {
    const ours = luxFromMagnitude(0) / (6e-3 / 14) ** 2;
    const source = 'lux over the pixel’s solid angle; number computed';
    check({
      id: 'sky 4.1',
      claim: 'star of V 0 on one pixel',
      source,
      unit: 'cd/m²',
      expected: 13.83,
      ours,
      tolerance: { relative: 0.005 },
    });
  });
});

describe('kelvinFromBMinusV', () => {
  it.each([
    [-0.2, 13585],
    [0, 10125],
    [0.3, 7462],
    [0.65, 5778],
    [1, 4743],
    [1.5, 3794],
  ])('B - V = %d: %d K (abs 1 K)', (bv, expected) => {
    const source = 'Ballesteros 2012; number computed';
    const ours = kelvinFromBMinusV(bv);
    check({
      id: 'sky 4.1',
      claim: `star of B - V ${bv}`,
      source,
      unit: 'K',
      expected,
      ours,
      tolerance: { absolute: 1 },
    });
  });
});
