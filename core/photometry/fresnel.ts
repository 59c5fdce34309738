/**
 * Share of unpolarised light that a clear face such as water, glass or varnish reflects: Fresnel's equations for a
 * dielectric without absorption, the mean of both polarisations, in the form of Cook and Torrance 1982.
 *
 * @param refractiveIndex of the face over that of the air, 1 or more; 1 reflects nothing
 * @param cosIncidence cosine between the light and the face's normal, 0 to 1
 */
export const clearFresnel = (refractiveIndex: number, cosIncidence: number): number => {
  const c = cosIncidence;
  const g = Math.sqrt(refractiveIndex * refractiveIndex - 1 + c * c);
  const across = (g - c) / (g + c);
  const along = (c * (g + c) - 1) / (c * (g - c) + 1);
  return 0.5 * across * across * (1 + along * along);
};

/**
 * The same for metals, whose equations ask for numbers that nobody has at hand: Schlick's approximation (1994) between
 * the share that is reflected straight on and all of it along the surface.
 */
export const metalFresnel = (normalReflectance: number, cosIncidence: number): number =>
  normalReflectance + (1 - normalReflectance) * (1 - cosIncidence) ** 5;
