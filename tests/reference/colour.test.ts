import { describe, expect, it } from 'vitest';
import { adaptationMatrix, planckLinearSrgb } from '../../core/colour/adaptation.ts';
import type { Matrix3, Triple } from '../../core/colour/matrix.ts';
import { miredFromKelvin, shiftTemperature } from '../../core/colour/mired.ts';
import { planckChromaticity } from '../../core/colour/planck-locus.ts';
import { decodeSrgb, encodeSrgb, linearSrgbFromXyz, xyzFromLinearSrgb } from '../../core/colour/srgb.ts';

const apart = (a: Matrix3, b: Matrix3): number =>
  Math.max(...a.flatMap((row, r) => row.map((v, c) => Math.abs(v - ((b[r] as Triple)[c] as number)))));

// Row 7.1, Planckian locus: c2 = 1.4388e-2 m K, CIE 1931 1 nm, computed; agrees with Wyszecki and Stiles (from memory)
const locus: readonly (readonly [number, number, number])[] = [
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
];

describe('planckChromaticity', () => {
  // fit of Kang et al. 2002; worst |dx| 0.00056, |dy| 0.00015 over the range by the page
  it.each(locus)('7.1: %d K lies at x = %d, y = %d (abs 6e-4)', (kelvin, x, y) => {
    const [fitX, fitY] = planckChromaticity(kelvin);
    expect(Math.abs(fitX - x)).toBeLessThanOrEqual(6e-4);
    expect(Math.abs(fitY - y)).toBeLessThanOrEqual(6e-4);
  });

  it.each([2222, 4000])('is continuous where its pieces meet, at %d K (abs 1e-4)', (kelvin) => {
    const [a, b] = [planckChromaticity(kelvin), planckChromaticity(kelvin + 1e-6)];
    expect(Math.abs(a[0] - b[0])).toBeLessThanOrEqual(1e-4);
    expect(Math.abs(a[1] - b[1])).toBeLessThanOrEqual(1e-4);
  });
});

describe('planckLinearSrgb', () => {
  // row below 7.1: D65 white, no adaptation, largest channel 1; computed. An error of 6e-4 in x grows up to tenfold in RGB.
  it.each([
    [1900, [1, 0.2325, 0]],
    [2700, [1, 0.4152, 0.0991]],
    [3200, [1, 0.5155, 0.194]],
    [4000, [1, 0.6535, 0.3772]],
    [5600, [1, 0.8589, 0.7781]],
    [6504, [1, 0.943, 0.9928]],
    [10000, [0.6095, 0.6952, 1]],
  ] as const)('%d K is %j, largest channel 1 (abs 6e-3)', (kelvin, expected) => {
    const rgb = planckLinearSrgb(kelvin);
    const most = Math.max(...rgb);
    rgb.forEach((v, c) => {
      expect(Math.abs(v / most - (expected[c] as number))).toBeLessThanOrEqual(6e-3);
    });
  });
});

// Rows 7.2a-d: shifts of the Wratten numbers as published, and exact from their pairs of kelvin
describe('mired shifts', () => {
  it.each([
    ['80A', 3200, 5500, -131, -130.68],
    ['80B', 3400, 5500, -112, -112.3],
    ['80C', 3800, 5500, -81, -81.34],
    ['80D', 4200, 5500, -56, -56.28],
    ['82', 3100, 3200, -10, -10.08],
    ['82A', 3000, 3200, -21, -20.83],
    ['82B', 2900, 3200, -32, -32.33],
    ['82C', 2800, 3200, -45, -44.64],
    ['81', 3300, 3200, 9, 9.47],
    ['81A', 3400, 3200, 18, 18.38],
    ['81B', 3500, 3200, 27, 26.79],
    ['81C', 3600, 3200, 35, 34.72],
    ['81D', 3700, 3200, 42, 42.23],
    ['81EF', 3850, 3200, 52, 52.76],
    ['85C', 5500, 3800, 81, 81.34],
    ['85', 5500, 3400, 112, 112.3],
    ['85B', 5500, 3200, 131, 130.68],
  ])(
    '7.2: %s takes %d K to %d K: published %d mired (abs 1), exact %d (abs 0.005)',
    (_, from, to, published, exact) => {
      const shift = miredFromKelvin(to) - miredFromKelvin(from);
      expect(Math.abs(shift - exact)).toBeLessThanOrEqual(0.00501);
      expect(Math.abs(shift - published)).toBeLessThanOrEqual(1);
    },
  );

  // checks below 7.2e-l: T2 = 1e6 / (1e6/T1 + shift), computed; the gels' shifts are trade practice
  it.each([
    [6500, 159, 3196],
    [5600, 159, 2962],
    [5000, 159, 2786],
    [3200, -137, 5698],
    [5600, 109, 3477],
    [5600, 64, 4122],
    [5600, 26, 4888],
    [5600, -137, 24055],
  ])('7.2: %d K shifted by %d mired is %d K (abs 0.5 K; 1 K above 20 000)', (from, shift, to) => {
    expect(Math.abs(shiftTemperature(from, shift) - to)).toBeLessThanOrEqual(to > 20_000 ? 1 : 0.5);
  });

  // the page's 3311 K comes from 143 mired, rounded; half a mired is 5.5 K there
  it('7.2: 7000 K shifted by 159 mired is 3311 K (abs 5.5 K)', () => {
    expect(Math.abs(shiftTemperature(7000, 159) - 3311)).toBeLessThanOrEqual(5.5);
  });

  it('7.2: 5600 K needs +133.93 mired for 3200 K (abs 0.005)', () => {
    expect(Math.abs(miredFromKelvin(3200) - miredFromKelvin(5600) - 133.93)).toBeLessThanOrEqual(0.005);
  });
});

describe('Bradford adaptation', () => {
  const chromaticity = ([x, y, z]: Triple) => [x / (x + y + z), y / (x + y + z)] as const;

  // computed from Lam 1985 / ICC (from memory); equals the widely published matrix (row 7.3c)
  it('7.3c: D65 to D50 (abs 1e-6)', () => {
    const matrix = adaptationMatrix(chromaticity([0.95047, 1, 1.08883]), chromaticity([0.96422, 1, 0.82521]));
    const published: Matrix3 = [
      [1.0478112, 0.0228866, -0.050127],
      [0.0295424, 0.9904844, -0.0170491],
      [-0.0092345, 0.0150436, 0.7521316],
    ];
    expect(apart(matrix, published)).toBeLessThanOrEqual(1e-6);
  });

  // computed (row 7.3d)
  it('7.3d: illuminant A to D65 (abs 2e-6)', () => {
    const matrix = adaptationMatrix([0.44758, 0.40745], [0.3127, 0.329]);
    const expected: Matrix3 = [
      [0.844669, -0.11795, 0.395013],
      [-0.13665, 1.104127, 0.129235],
      [0.079894, -0.134978, 3.193588],
    ];
    expect(apart(matrix, expected)).toBeLessThanOrEqual(2e-6);
  });
});

// IEC 61966-2-1:1999
describe('sRGB', () => {
  it('7.3e: matrix to XYZ from primaries and white (abs 1e-7)', () => {
    const expected: Matrix3 = [
      [0.4123908, 0.3575843, 0.1804808],
      [0.212639, 0.7151687, 0.0721923],
      [0.0193308, 0.1191948, 0.9505322],
    ];
    expect(apart(xyzFromLinearSrgb, expected)).toBeLessThanOrEqual(1e-7);
  });

  it('7.3f: both matrices agree with the standard’s four digits (abs 1.5e-4; its two are not exact inverses)', () => {
    const forward: Matrix3 = [
      [0.4124, 0.3576, 0.1805],
      [0.2126, 0.7152, 0.0722],
      [0.0193, 0.1192, 0.9505],
    ];
    const inverse: Matrix3 = [
      [3.2406, -1.5372, -0.4986],
      [-0.9689, 1.8758, 0.0415],
      [0.0557, -0.204, 1.057],
    ];
    expect(apart(xyzFromLinearSrgb, forward)).toBeLessThanOrEqual(1.5e-4);
    expect(apart(linearSrgbFromXyz, inverse)).toBeLessThanOrEqual(4e-4);
  });

  it.each([
    [0.001, 0.01292],
    [0.0031308, 0.04045],
    [0.01, 0.0998528],
    [0.18, 0.4613561],
    [0.2140411, 0.5],
    [0.5, 0.735357],
  ])('7.3g: linear %d is encoded as %d (abs 2e-7)', (linear, encoded) => {
    expect(Math.abs(encodeSrgb(linear) - encoded)).toBeLessThanOrEqual(2e-7);
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
    expect(Math.abs(decodeSrgb(code / 255) - linear)).toBeLessThanOrEqual(1e-7);
  });
});
