import type { Chromaticity } from './chromaticity.ts';

/**
 * Chromaticity of a phase of daylight with a correlated colour temperature of 4000 to 25 000 K (CIE 15:2004, 3.1).
 *
 * The temperature is meant with c2 = 1.4388e-2 m K. The CIE's nominal names are older: D65 is at
 * 6500 x 1.4388/1.4380 = 6503.6 K, so multiply a nominal temperature first. The two polynomials meet at 7000 K within
 * 1e-6 in x. Callers keep to the range; the fit means nothing outside it.
 */
export const daylightChromaticity = (temperatureKelvin: number): Chromaticity => {
  const u = 1000 / temperatureKelvin;
  const x =
    temperatureKelvin <= 7000
      ? ((-4.607 * u + 2.9678) * u + 0.09911) * u + 0.244063
      : ((-2.0064 * u + 1.9018) * u + 0.24748) * u + 0.23704;
  return [x, (-3 * x + 2.87) * x - 0.275];
};
