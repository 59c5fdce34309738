import { add, basisAround, cross, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';

/**
 * A rough sheen is a face of countless tiny mirrors ("facets"), whose slopes follow the distribution of Trowbridge and
 * Reitz as Walter et al. 2007 use it (GGX), and which hide each other as Smith worked out, with the light's and the eye's
 * side taken together (Heitz 2014, eq. 99). Light that is mirrored more than once between facets is lost: next to nothing
 * on a smooth sheen, up to half on the roughest.
 *
 * All directions are unit and point away from the surface; cosines are those with the normal, above 0; alpha is above 0.
 */

/** Root that both masking terms are made of; it lies between alpha and 1. */
const masking = (alpha: number, cos: number): number => Math.sqrt(alpha * alpha + (1 - alpha * alpha) * cos * cos);

/**
 * Facets that lie a given way, square metres a square metre and steradian. Walter et al. 2007, eq. 33, with the tangent
 * written out, so that 32-bit numbers can hold the narrow lobe of a smooth sheen.
 */
export const facetDensity = (alpha: number, normal: Vec3, half: Vec3): number => {
  const cos = dot(normal, half);
  if (cos <= 0) return 0;
  const across = cross(normal, half);
  const root = alpha * alpha * cos * cos + dot(across, across);
  return (alpha * alpha) / (Math.PI * root * root);
};

/** Share of the facets that both eye and light see, over 4 cosines: Heitz 2014, eq. 99. */
const seenByBoth = (alpha: number, cosEye: number, cosLight: number): number =>
  0.5 / (cosLight * masking(alpha, cosEye) + cosEye * masking(alpha, cosLight));

/**
 * What a sheen of facets that reflect everything sends from one direction into another, per steradian: luminance over
 * illuminance (BRDF). The facets' Fresnel share is `fresnel` of the angle between either direction and the middle of both.
 */
export const facetLobe = (alpha: number, normal: Vec3, toEye: Vec3, toLight: Vec3): number => {
  const cosEye = dot(normal, toEye);
  const cosLight = dot(normal, toLight);
  if (cosEye <= 0 || cosLight <= 0) return 0;
  const half = normalize(add(toEye, toLight));
  return facetDensity(alpha, normal, half) * seenByBoth(alpha, cosEye, cosLight);
};

/**
 * A facet that the eye sees, drawn as often as it is seen (Heitz 2018), by way of a cap of the sphere (Dupuy and Benyoub
 * 2023).
 *
 * @param u of the two numbers in [0, 1) the turn, `v` the slope
 */
export const seenFacet = (alpha: number, normal: Vec3, toEye: Vec3, u: number, v: number): Vec3 => {
  const { first, second } = basisAround(normal);
  // as if the slopes were stretched until the facets made half a ball
  const eye = normalize([alpha * dot(toEye, first), alpha * dot(toEye, second), dot(toEye, normal)]);
  const z = (1 - v) * (1 + eye[2]) - eye[2];
  const r = Math.sqrt(Math.max(1 - z * z, 0));
  const [x, y] = [r * Math.cos(2 * Math.PI * u) + eye[0], r * Math.sin(2 * Math.PI * u) + eye[1]];
  const slope = add(scale(first, alpha * x), scale(second, alpha * y));
  return normalize(add(slope, scale(normal, Math.max(z + eye[2], 1e-6))));
};

/** A direction mirrored by a facet. */
export const mirroredBy = (facet: Vec3, toEye: Vec3): Vec3 => sub(scale(facet, 2 * dot(facet, toEye)), toEye);

/** Density per steradian with which a direction comes from mirroring the eye's in a `seenFacet`. Heitz 2018, eq. 17. */
export const mirroredDensity = (alpha: number, normal: Vec3, toEye: Vec3, way: Vec3): number => {
  const cosEye = dot(normal, toEye);
  const half = normalize(add(toEye, way));
  return facetDensity(alpha, normal, half) / (2 * (cosEye + masking(alpha, cosEye)));
};

/** What such a direction counts for: lobe times cosine over density, without the facets' Fresnel share. Never above 1. */
export const mirroredShare = (alpha: number, cosEye: number, cosWay: number): number =>
  2 * cosWay * seenByBoth(alpha, cosEye, cosWay) * (cosEye + masking(alpha, cosEye));
