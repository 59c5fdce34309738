/** Mired from kelvin: 1e6 / T. */
export const miredFromKelvin = (temperatureKelvin: number): number => 1e6 / temperatureKelvin;

/** Limits of the Planckian fit in `planck-locus.ts`; shifts that lead past them stop there. */
export const temperatureLimitsKelvin = { min: 1667, max: 25000 } as const;

/**
 * Colour temperature after a mired shift: T2 = 1e6 / (1e6/T1 + shift). Positive shifts warm.
 * Result is held within the limits of the locus fit, so a strong blue gel on a cold lamp gives 25 000 K, not infinity.
 */
export const shiftTemperature = (temperatureKelvin: number, shiftMired: number): number => {
  const { min, max } = temperatureLimitsKelvin;
  const mired = Math.max(miredFromKelvin(temperatureKelvin) + shiftMired, miredFromKelvin(max));
  return Math.min(Math.max(1e6 / mired, min), max);
};
