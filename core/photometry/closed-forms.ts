/**
 * Configuration factor of a disc for a parallel element on its axis: R^2 / (R^2 + d^2). Irradiance is pi L F.
 * Howell catalogue B-type factor; checkvalues.md 1.2a.
 */
export const discFactorOnAxis = (radiusMetres: number, distanceMetres: number): number =>
  radiusMetres ** 2 / (radiusMetres ** 2 + distanceMetres ** 2);

/**
 * Configuration factor of an a x b rectangle for a parallel element under one of its corners, at distance c
 * (Howell B-4; checkvalues.md 1.2d). A rectangle centred over the element is four of these.
 */
export const rectangleFactorUnderCorner = (a: number, b: number, c: number): number => {
  const x = a / c;
  const y = b / c;
  const px = Math.sqrt(1 + x * x);
  const py = Math.sqrt(1 + y * y);
  return ((x / px) * Math.atan(y / px) + (y / py) * Math.atan(x / py)) / (2 * Math.PI);
};

/** Illuminance in lux from a point source: E = I cos / d^2. */
export const pointIlluminance = (intensityCandela: number, cosIncidence: number, distanceMetres: number): number =>
  (intensityCandela * cosIncidence) / distanceMetres ** 2;
