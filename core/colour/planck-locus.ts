import { type Chromaticity, chromaticityFromXyz } from './chromaticity.ts';
import { cie1931 } from './cie-1931.ts';

/** Second radiation constant in metre kelvin, rounded as in the CIE's tables; today's exact value is 1.438777e-2. */
const c2 = 1.4388e-2;

/** What does not depend on temperature, for each wavelength: c2 / wavelength, and the matching functions over its fifth power. */
const samples = cie1931.y.map((y, i) => {
  const wavelengthMicrometres = (cie1931.startNm + i * cie1931.stepNm) / 1000;
  const weight = wavelengthMicrometres ** -5;
  return {
    kelvin: (c2 * 1e6) / wavelengthMicrometres,
    x: (cie1931.x[i] as number) * weight,
    y: y * weight,
    z: (cie1931.z[i] as number) * weight,
  };
});

/**
 * Chromaticity of a black body: Planck's law summed over the CIE 1931 observer in steps of 5 nm, with
 * c2 = 1.4388e-2 m K.
 *
 * Valid from 1000 K upward without limit; callers keep to finite positive temperatures. Within 1e-5 in x and y of sums in
 * steps of 1 nm (tests/reference/white-points.test.ts). Takes a few microseconds, so nothing is remembered between calls.
 * Source: Planck's law as in CIE 15.
 */
export const planckChromaticity = (temperatureKelvin: number): Chromaticity => {
  let [x, y, z] = [0, 0, 0];
  for (const sample of samples) {
    const power = 1 / Math.expm1(sample.kelvin / temperatureKelvin);
    x += sample.x * power;
    y += sample.y * power;
    z += sample.z * power;
  }
  return chromaticityFromXyz([x, y, z]);
};
