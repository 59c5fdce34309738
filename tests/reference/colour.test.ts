import { describe, it } from 'vitest';
import { adaptationMatrix, bradford, bradfordInverse } from '../../core/colour/adaptation.ts';
import { chromaticityFromXyz } from '../../core/colour/chromaticity.ts';
import type { Matrix3, Triple } from '../../core/colour/matrix.ts';
import { decodeSrgb, encodeSrgb, linearSrgbFromXyz, xyzFromLinearSrgb } from '../../core/colour/srgb.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Adaptation and encoding');

interface MatrixClaim {
  readonly id: string;
  readonly name: string;
  readonly source: string;
  readonly ours: Matrix3;
  readonly expected: Matrix3;
  readonly absolute: number;
}

const matrices: readonly MatrixClaim[] = [
  {
    id: '7.3a',
    name: 'Bradford cone response',
    source: 'Lam 1985, ICC, from memory',
    ours: bradford,
    expected: [
      [0.8951, 0.2664, -0.1614],
      [-0.7502, 1.7135, 0.0367],
      [0.0389, -0.0685, 1.0296],
    ],
    absolute: 1e-12,
  },
  {
    id: '7.3b',
    name: 'inverse of the Bradford cone response',
    source: 'inverse of 7.3a, computed apart',
    ours: bradfordInverse,
    expected: [
      [0.9869929, -0.1470543, 0.1599627],
      [0.4323053, 0.5183603, 0.0492912],
      [-0.0085287, 0.0400428, 0.9684867],
    ],
    absolute: 1e-7,
  },
  {
    id: '7.3c',
    name: 'Bradford D65 to D50',
    source: 'ICC white points; widely published matrix',
    ours: adaptationMatrix(chromaticityFromXyz([0.95047, 1, 1.08883]), chromaticityFromXyz([0.96422, 1, 0.82521])),
    expected: [
      [1.0478112, 0.0228866, -0.050127],
      [0.0295424, 0.9904844, -0.0170491],
      [-0.0092345, 0.0150436, 0.7521316],
    ],
    absolute: 1e-6,
  },
  {
    id: '7.3d',
    name: 'Bradford illuminant A to D65',
    source: 'Lam 1985, computed apart',
    ours: adaptationMatrix([0.44758, 0.40745], [0.3127, 0.329]),
    expected: [
      [0.844669, -0.11795, 0.395013],
      [-0.13665, 1.104127, 0.129235],
      [0.079894, -0.134978, 3.193588],
    ],
    absolute: 2e-6,
  },
  {
    id: '7.3e',
    name: 'sRGB to XYZ',
    source: 'from the primaries of IEC 61966-2-1:1999, computed apart',
    ours: xyzFromLinearSrgb,
    expected: [
      [0.4123908, 0.3575843, 0.1804808],
      [0.212639, 0.7151687, 0.0721923],
      [0.0193308, 0.1191948, 0.9505322],
    ],
    absolute: 1e-7,
  },
  // the standard's two matrices of four digits are not exact inverses of each other (trap T20)
  {
    id: '7.3f',
    name: 'sRGB to XYZ, four digits',
    source: 'IEC 61966-2-1:1999',
    ours: xyzFromLinearSrgb,
    expected: [
      [0.4124, 0.3576, 0.1805],
      [0.2126, 0.7152, 0.0722],
      [0.0193, 0.1192, 0.9505],
    ],
    absolute: 1e-4,
  },
  {
    id: '7.3f',
    name: 'XYZ to sRGB, four digits',
    source: 'IEC 61966-2-1:1999',
    ours: linearSrgbFromXyz,
    expected: [
      [3.2406, -1.5372, -0.4986],
      [-0.9689, 1.8758, 0.0415],
      [0.0557, -0.204, 1.057],
    ],
    absolute: 4e-4,
  },
];

describe('matrices', () => {
  it.each(matrices)('$id: $name, each element (abs $absolute)', ({ id, name, source, ours, expected, absolute }) => {
    for (const row of [0, 1, 2] as const)
      for (const column of [0, 1, 2] as const)
        check({
          id,
          claim: `${name}, row ${row + 1}, column ${column + 1}`,
          source,
          unit: '',
          expected: (expected[row] as Triple)[column],
          ours: (ours[row] as Triple)[column],
          tolerance: { absolute },
        });
  });
});

describe('sRGB encoding', () => {
  // the two pieces of the standard's curve miss each other by 3e-8 (trap T20)
  it.each([
    [0.001, 0.01292],
    [0.0031308, 0.04045],
    [0.01, 0.0998528],
    [0.18, 0.4613561],
    [0.2140411, 0.5],
    [0.5, 0.735357],
  ])('7.3g: linear %d is encoded as %d (abs 2e-7)', (linear, encoded) => {
    check({
      id: '7.3g',
      claim: `code value of linear ${linear}`,
      source: 'IEC 61966-2-1:1999',
      unit: '',
      expected: encoded,
      ours: encodeSrgb(linear),
      tolerance: { absolute: 2e-7 },
    });
  });

  it.each([
    [1, 0.00030353],
    [10, 0.00303527],
    [11, 0.00334654],
    [64, 0.0512695],
    [128, 0.2158605],
    [188, 0.5028865],
    [254, 0.9911021],
  ])('7.3h: code %d of 255 is %d linear (abs 1e-7)', (code, linear) => {
    check({
      id: '7.3h',
      claim: `linear value of code ${code} of 255`,
      source: 'IEC 61966-2-1:1999',
      unit: '',
      expected: linear,
      ours: decodeSrgb(code / 255),
      tolerance: { absolute: 1e-7 },
    });
  });
});
