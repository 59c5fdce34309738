import type { Triple } from '../../../core/colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { gaussLegendre } from '../../reference/support/quadrature.ts';

/**
 * Light of a sky on level ground, lux: Gauss and Legendre's rule in the square of the sine of height, even steps in bearing.
 * Another way of summing than that by which the core balances twilight.
 */
export const horizontalLux = (luminance: (toward: Vec3) => Triple, rings = 48, turns = 96): number => {
  let sum = 0;
  for (const { at, weight } of gaussLegendre(rings)) {
    // light on the ground is pi times the mean over the square of the sine
    const sine = Math.sqrt(at);
    const flat = Math.sqrt(1 - at);
    for (let j = 0; j < turns; j++) {
      const bearing = (2 * Math.PI * (j + 0.5)) / turns;
      const toward: Vec3 = [flat * Math.sin(bearing), sine, -flat * Math.cos(bearing)];
      sum += (Math.PI * weight * luminanceOfLinearSrgb(luminance(toward))) / turns;
    }
  }
  return sum;
};
