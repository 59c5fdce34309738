import { apply, invert, type Matrix3, multiply, type Triple } from './matrix.ts';
import { type Chromaticity, planckChromaticity } from './planck-locus.ts';
import { linearSrgbFromXyz, srgbWhite, xyzFromChromaticity, xyzFromLinearSrgb } from './srgb.ts';

/** Bradford cone response (Lam 1985; as used by the ICC; from memory). */
const bradford: Matrix3 = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];
const bradfordInverse = invert(bradford);

/** XYZ to XYZ: makes the `from` white look as the `to` white, both at Y = 1. */
export const adaptationMatrix = (from: Chromaticity, to: Chromaticity): Matrix3 => {
  const a = apply(bradford, xyzFromChromaticity(from));
  const b = apply(bradford, xyzFromChromaticity(to));
  const gain: Matrix3 = [
    [b[0] / a[0], 0, 0],
    [0, b[1] / a[1], 0],
    [0, 0, b[2] / a[2]],
  ];
  return multiply(bradfordInverse, multiply(gain, bradford));
};

/**
 * Linear sRGB to linear sRGB for a camera's white balance: light of that temperature comes out neutral, at the same
 * luminance. `tint` moves the white across the locus: +1 = 0.01 in y toward green is removed.
 */
export const whiteBalanceMatrix = (temperatureKelvin: number, tint: number): Matrix3 => {
  const [x, y] = planckChromaticity(temperatureKelvin);
  const white: Chromaticity = [x, y + tint * 0.01];
  return multiply(linearSrgbFromXyz, multiply(adaptationMatrix(white, srgbWhite), xyzFromLinearSrgb));
};

/** Light of a black body in linear sRGB (D65 white, no adaptation), scaled to luminance 1. Blue may be negative below 1900 K. */
export const planckLinearSrgb = (temperatureKelvin: number): Triple =>
  apply(linearSrgbFromXyz, xyzFromChromaticity(planckChromaticity(temperatureKelvin)));
