/** CIE 1931 chromaticity. */
export type Chromaticity = readonly [x: number, y: number];

/**
 * Chromaticity of a black body, cubic fit of Kang et al. 2002 (J. Korean Phys. Soc. 41, 865), 1667 to 25 000 K.
 * Within 6e-4 in x and y of the locus computed from the CIE 1931 tables (checkvalues.md 7.1). Callers keep to the range.
 */
export const planckChromaticity = (temperatureKelvin: number): Chromaticity => {
  const u = 1000 / temperatureKelvin;
  const x =
    temperatureKelvin <= 4000
      ? ((-0.2661239 * u - 0.234358) * u + 0.8776956) * u + 0.17991
      : ((-3.0258469 * u + 2.1070379) * u + 0.2226347) * u + 0.24039;
  const y =
    temperatureKelvin <= 2222
      ? ((-1.1063814 * x - 1.3481102) * x + 2.18555832) * x - 0.20219683
      : temperatureKelvin <= 4000
        ? ((-0.9549476 * x - 1.37418593) * x + 2.09137015) * x - 0.16748867
        : ((3.081758 * x - 5.8733867) * x + 3.75112997) * x - 0.37001483;
  return [x, y];
};
