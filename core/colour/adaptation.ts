import { type Chromaticity, chromaticityFromUv, uvFromChromaticity, xyzFromChromaticity } from './chromaticity.ts';
import { apply, invert, type Matrix3, multiply, type Triple } from './matrix.ts';
import { planckChromaticity } from './planck-locus.ts';
import { planckGreenNormal } from './planck-normal.ts';
import { linearSrgbFromXyz, srgbWhite, xyzFromLinearSrgb } from './srgb.ts';
import { whiteChromaticity } from './white-locus.ts';

/** Bradford cone response from XYZ (Lam 1985; as used by the ICC; from memory). */
export const bradford: Matrix3 = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

/** XYZ from Bradford cone response. */
export const bradfordInverse: Matrix3 = invert(bradford);

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

/** What one step of tint moves the white across the locus, in CIE 1960 uv: our choice. */
const duvPerTint = 0.005;

/**
 * Linear sRGB to linear sRGB for a camera's white balance: light of that temperature comes out neutral, at the same
 * luminance. Light of a temperature means the white locus that lamps use (`whiteChromaticity`).
 *
 * `tint` moves the white that comes out neutral across the Planck locus, square to it: +1 by a Duv of 0.005 to the green
 * side. So a positive tint takes green out of the picture and leaves it more magenta; a negative one makes it greener.
 * Valid from 1667 to 25 000 K and for tints from -5 to 5.
 */
export const whiteBalanceMatrix = (temperatureKelvin: number, tint: number): Matrix3 => {
  const [u, v] = uvFromChromaticity(whiteChromaticity(temperatureKelvin));
  const [nu, nv] = planckGreenNormal(temperatureKelvin);
  const duv = tint * duvPerTint;
  const white = chromaticityFromUv([u + duv * nu, v + duv * nv]);
  return multiply(linearSrgbFromXyz, multiply(adaptationMatrix(white, srgbWhite), xyzFromLinearSrgb));
};

/** Light of a black body in linear sRGB (D65 white, no adaptation), scaled to luminance 1. Blue is negative below 1901 K. */
export const planckLinearSrgb = (temperatureKelvin: number): Triple =>
  apply(linearSrgbFromXyz, xyzFromChromaticity(planckChromaticity(temperatureKelvin)));
