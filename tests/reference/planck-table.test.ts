import { describe, it } from 'vitest';
import { cie1931 } from '../../core/colour/cie-1931.ts';
import { planckChromaticity } from '../../core/colour/planck-locus.ts';
import { accuracySection } from './support/accuracy.ts';
import { chromaticityOfSpectrum, readSpectrum } from './support/spectrum.ts';

const { check } = accuracySection('White points and loci');

describe('planckChromaticity', () => {
  // row 7.1: c2 = 1.4388e-2 m K; agrees with Wyszecki and Stiles to four digits (from memory)
  it.each([
    [1500, 0.58572, 0.39312],
    [1900, 0.53778, 0.4112],
    [2000, 0.52668, 0.4133],
    [2200, 0.50563, 0.41521],
    [2500, 0.477, 0.41368],
    [2700, 0.45986, 0.4106],
    [2856, 0.44754, 0.40743],
    [3000, 0.43693, 0.40408],
    [3200, 0.42336, 0.39895],
    [3500, 0.40531, 0.39072],
    [4000, 0.38044, 0.37675],
    [4500, 0.36079, 0.36355],
    [5000, 0.3451, 0.35161],
    [5500, 0.33244, 0.34104],
    [5600, 0.3302, 0.33908],
    [6000, 0.32209, 0.33176],
    [6500, 0.31353, 0.32363],
    [7000, 0.30638, 0.31651],
    [8000, 0.29519, 0.30477],
    [10000, 0.28063, 0.28829],
  ])('%d K lies at x = %d, y = %d (abs 1e-5)', (kelvin, x, y) => {
    const ours = planckChromaticity(kelvin);
    for (const [axis, i, expected] of [
      ['x', 0, x],
      ['y', 1, y],
    ] as const)
      check({
        id: '7.1',
        claim: `black body of ${kelvin} K, ${axis}`,
        source: 'Planck’s law, CIE 1931 in steps of 1 nm, computed apart',
        unit: '',
        expected,
        ours: ours[i],
        tolerance: { absolute: 1e-5 },
      });
  });
});

describe('cie1931', () => {
  // a slip in any figure of the table shows here; the published sums run from 380 to 780 nm
  it.each([
    ['x', 21.371524],
    ['y', 21.371327],
    ['z', 21.37154],
  ] as const)('column %s sums to %d from 380 to 780 nm (abs 1e-5)', (column, expected) => {
    const sum = cie1931[column].slice(4, 85).reduce((total, value) => total + value, 0);
    check({
      id: '7.1',
      claim: `sum of the matching function ${column}, 380 to 780 nm`,
      source: 'CIE 15:2004, table T.4, from memory',
      unit: '',
      expected,
      ours: sum,
      tolerance: { absolute: 1e-5 },
    });
  });
});

// tests the table of matching functions against the CIE's own spectra and chromaticities
describe('chromaticity of published spectra', () => {
  const equalEnergy = { startNm: 380, power: Array.from({ length: 81 }, () => 1) };

  // D50 and D55 are published in steps of 5 nm from 380 to 780 nm only; A is smooth
  it.each([
    ['A', 0.44758, 0.40745, 1.5e-5],
    ['D50', 0.34567, 0.35851, 3e-5],
    ['D55', 0.33243, 0.34744, 3e-5],
    ['D65', 0.31272, 0.32903, 3e-5],
    ['E', 1 / 3, 1 / 3, 1e-5],
  ])('7.1a, b: illuminant %s sums to x = %d, y = %d (abs %d)', (name, x, y, absolute) => {
    const ours = chromaticityOfSpectrum(
      name === 'E' ? equalEnergy : readSpectrum(`cie-illuminant-${name.toLowerCase()}`),
    );
    for (const [axis, i, expected] of [
      ['x', 0, x],
      ['y', 1, y],
    ] as const)
      check({
        id: name === 'A' ? '7.1a' : name === 'E' ? '7.1h' : '7.1b',
        claim: `illuminant ${name} from its spectrum, ${axis}`,
        source: name === 'D55' ? 'CIE 15:2004, chromaticity from memory' : 'CIE 15:2004',
        unit: '',
        expected,
        ours: ours[i],
        tolerance: { absolute },
      });
  });
});
