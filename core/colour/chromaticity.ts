import type { Triple } from './matrix.ts';

/** CIE 1931 chromaticity. */
export type Chromaticity = readonly [x: number, y: number];

/** CIE 1960 chromaticity, in which colour temperature and Duv are defined. */
export type Uv = readonly [u: number, v: number];

/** XYZ with Y = 1 from a chromaticity. */
export const xyzFromChromaticity = ([x, y]: Chromaticity): Triple => [x / y, 1, (1 - x - y) / y];

/** Chromaticity of XYZ that is not black. */
export const chromaticityFromXyz = ([x, y, z]: Triple): Chromaticity => [x / (x + y + z), y / (x + y + z)];

/** CIE 1960 uv from CIE 1931 xy (CIE 15). */
export const uvFromChromaticity = ([x, y]: Chromaticity): Uv => {
  const d = -2 * x + 12 * y + 3;
  return [(4 * x) / d, (6 * y) / d];
};

/** CIE 1931 xy from CIE 1960 uv (CIE 15). */
export const chromaticityFromUv = ([u, v]: Uv): Chromaticity => {
  const d = 2 * u - 8 * v + 4;
  return [(3 * u) / d, (2 * v) / d];
};
