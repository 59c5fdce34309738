/** Mired from kelvin: 1e6 / T. */
export const miredFromKelvin = (temperatureKelvin: number): number => 1e6 / temperatureKelvin;

/** Kelvin from mired: 1e6 / M. */
export const kelvinFromMired = (mired: number): number => 1e6 / mired;

/** Limits of the white locus in `white-locus.ts`, and of the document; shifts that lead past them stop there. */
export const temperatureLimitsKelvin = { min: 1667, max: 25000 } as const;

/**
 * Colour temperature after a mired shift: T2 = 1e6 / (1e6/T1 + shift). Positive shifts warm.
 * Result is held within the limits of the white locus, so a strong blue gel on a cold lamp gives 25 000 K, not infinity.
 */
export const shiftTemperature = (temperatureKelvin: number, shiftMired: number): number => {
  const { min, max } = temperatureLimitsKelvin;
  const mired = Math.max(miredFromKelvin(temperatureKelvin) + shiftMired, miredFromKelvin(max));
  return Math.min(Math.max(kelvinFromMired(mired), min), max);
};
