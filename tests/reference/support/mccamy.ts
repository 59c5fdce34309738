import type { Chromaticity } from '../../../core/colour/chromaticity.ts';

/**
 * Correlated colour temperature by the cubic of McCamy (Color Res. Appl. 17, 142, 1992), long form. An oracle for tests:
 * within 10 K of the true one from 2500 to 7000 K, useless far outside.
 */
export const mccamyKelvin = ([x, y]: Chromaticity): number => {
  const n = (x - 0.332) / (0.1858 - y);
  return ((449 * n + 3525) * n + 6823.3) * n + 5520.33;
};
