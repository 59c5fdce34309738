/**
 * Illuminance in closed form. A configuration factor F is the share of an even bright hemisphere that a source makes up,
 * weighed by the cosine on the receiving element: illuminance = pi L F with L the source's luminance in cd/m^2.
 * All lengths of one call share a unit, metres in the core. Nothing here knows of shadows.
 */

/**
 * Illuminance in lux from a point source: E = I cos / d^2. Good to 1 % from five times a flat Lambertian source's width.
 *
 * @param cosIncidence cosine between the element's normal and the way to the source, above 0
 */
export const pointIlluminance = (intensityCandela: number, cosIncidence: number, distanceMetres: number): number =>
  (intensityCandela * cosIncidence) / distanceMetres ** 2;

/**
 * Configuration factor of a disc for a parallel element on its axis: R^2 / (R^2 + d^2) (I. Martinez, UPM, radiative view
 * factors). Times cos for an element tilted by less than the angle at which the disc begins to set.
 */
export const discFactorOnAxis = (radiusMetres: number, distanceMetres: number): number =>
  radiusMetres ** 2 / (radiusMetres ** 2 + distanceMetres ** 2);

/**
 * Configuration factor of a sphere: (R / d)^2 cos, exact at any distance while the whole sphere stands over the element's
 * plane, that is while d cos is at least R (from memory; follows from the inverse square law, as an even globe sends what
 * its centre would).
 *
 * @param distanceMetres from the element to the sphere's centre, more than the radius
 * @param cosIncidence cosine between the element's normal and the way to the centre
 */
export const sphereFactor = (radiusMetres: number, distanceMetres: number, cosIncidence: number): number =>
  (radiusMetres / distanceMetres) ** 2 * cosIncidence;

/**
 * Configuration factor of an a x b rectangle for a parallel element under one of its corners, at distance c
 * (Howell, catalogue B-4). A rectangle centred over the element is four of these.
 */
export const rectangleFactorUnderCorner = (a: number, b: number, c: number): number => {
  const x = a / c;
  const y = b / c;
  const px = Math.sqrt(1 + x * x);
  const py = Math.sqrt(1 + y * y);
  return ((x / px) * Math.atan(y / px) + (y / py) * Math.atan(x / py)) / (2 * Math.PI);
};

/**
 * Configuration factor of an upright rectangle that stands on the element's plane and faces it, with one foot straight in
 * front (Howell, catalogue B-3). One that stands to both sides is two of these.
 *
 * @param a height
 * @param b width
 * @param c distance from the element to the foot line, more than 0
 */
export const rectangleFactorUpright = (a: number, b: number, c: number): number => {
  const slant = Math.hypot(a, c);
  return (Math.atan(b / c) - (c / slant) * Math.atan(b / slant)) / (2 * Math.PI);
};

/**
 * Illuminance in lux from a thin Lambertian tube on an element opposite one of its ends that faces square to it. A spot
 * sends I sin at an angle off the tube, the element takes d / r of it, so E = I d^2 x integral of dx / r^4
 * = (I / 2) (l / (d^2 + l^2) + atan(l / d) / d); own derivation. A tube to both sides is two of these; one without end
 * gives pi I / 2d, which over a cylinder round it is the tube's flux of pi^2 I a metre.
 *
 * @param candelaPerMetre intensity square to the tube of one metre of it
 * @param lengthMetres Infinity is allowed
 * @param distanceMetres from the tube's middle line, square to it; a tube of radius R gives up to 0.8 R / d more
 */
export const tubeIlluminanceUnderEnd = (
  candelaPerMetre: number,
  lengthMetres: number,
  distanceMetres: number,
): number => {
  const near = lengthMetres === Number.POSITIVE_INFINITY ? 0 : lengthMetres / (distanceMetres ** 2 + lengthMetres ** 2);
  return (candelaPerMetre / 2) * (near + Math.atan(lengthMetres / distanceMetres) / distanceMetres);
};
