import { type Chromaticity, xyzFromChromaticity } from './chromaticity.ts';
import { apply, invert, type Matrix3, type Triple } from './matrix.ts';

/** White of sRGB (IEC 61966-2-1:1999). */
export const srgbWhite: Chromaticity = [0.3127, 0.329];

const primaries = {
  red: xyzFromChromaticity([0.64, 0.33]),
  green: xyzFromChromaticity([0.3, 0.6]),
  blue: xyzFromChromaticity([0.15, 0.06]),
};

/** Linear sRGB to XYZ, exact from the primaries and white of IEC 61966-2-1:1999. */
export const xyzFromLinearSrgb: Matrix3 = (() => {
  const { red, green, blue } = primaries;
  const columns: Matrix3 = [
    [red[0], green[0], blue[0]],
    [red[1], green[1], blue[1]],
    [red[2], green[2], blue[2]],
  ];
  const s = apply(invert(columns), xyzFromChromaticity(srgbWhite));
  const row = (r: Triple): Triple => [r[0] * s[0], r[1] * s[1], r[2] * s[2]];
  return [row(columns[0]), row(columns[1]), row(columns[2])];
})();

/** XYZ to linear sRGB. */
export const linearSrgbFromXyz: Matrix3 = invert(xyzFromLinearSrgb);

/** Relative luminance of linear sRGB: the Y row. */
export const luminanceOfLinearSrgb = ([r, g, b]: Triple): number => {
  const [wr, wg, wb] = xyzFromLinearSrgb[1];
  return wr * r + wg * g + wb * b;
};

/** Encoded value in [0, 1] from linear; IEC 61966-2-1:1999. Input outside [0, 1] is clamped. */
export const encodeSrgb = (linear: number): number => {
  const v = Math.min(Math.max(linear, 0), 1);
  return v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055;
};

/** Linear value from encoded in [0, 1]; IEC 61966-2-1:1999. */
export const decodeSrgb = (encoded: number): number =>
  encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
