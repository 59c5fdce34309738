import type { Ray } from '../camera/camera-view.ts';
import type { Triple } from '../colour/matrix.ts';
import { add, dot, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import { mirroredBy, mirroredDensity, mirroredShare, seenFacet } from '../photometry/facets.ts';
import { clearFresnel, metalFresnel } from '../photometry/fresnel.ts';
import { throughSheenAt } from '../photometry/through-sheen.ts';
import type { Sheen } from '../world/stage-finish.ts';
import type { SurfacePoint } from './surface-point.ts';

/** Share that a sheen reflects at an angle: exact for clear faces, Schlick's for metals. */
export const fresnel = ({ refractiveIndex, normalReflectance: [r, g, b] }: Sheen, cosIncidence: number): Triple => {
  if (refractiveIndex === null)
    return [metalFresnel(r, cosIncidence), metalFresnel(g, cosIncidence), metalFresnel(b, cosIncidence)];
  const share = clearFresnel(refractiveIndex, cosIncidence);
  return [share, share, share];
};

/**
 * What is left under a sheen of light that the surface returns or lets through evenly: it passes the sheen on its way in
 * and again on its way out. Scaled so that of light from all round the surface returns its reflectance times what the
 * sheen does not reflect toward the eye: together never more than came, all of it under a white surface, and the same with
 * eye and light exchanged (Shirley, Hu, Smits and Lafortune 1997 for a mirror, Kelemen and Szirmay-Kalos 2001 for a rough
 * sheen). 0 under metal.
 */
export const evenShare = ({ through }: Sheen, cosEye: number, cosLight: number): number =>
  through ? (throughSheenAt(through, cosEye) * throughSheenAt(through, cosLight)) / through.mean : 0;

/** `evenShare` for light that comes alike from all round: its mean, weighted with the cosine. */
export const evenShareAllRound = ({ through }: Sheen, cosEye: number): number =>
  through ? throughSheenAt(through, cosEye) : 0;

/** Smallest cosine between sheen and eye, and between a mirrored ray and the face. */
const leastCosine = 1e-3;

const lifted = (direction: Vec3, normal: Vec3): Vec3 => {
  const cos = dot(direction, normal);
  return cos >= leastCosine ? direction : normalize(add(direction, scale(normal, leastCosine - cos)));
};

/** The normal that a sheen is reckoned with: the shading normal, turned to the eye where it has turned away from it. */
export const sheenNormal = ({ normal, toEye }: SurfacePoint): Vec3 => {
  const cos = dot(normal, toEye);
  return cos >= leastCosine ? normal : normalize(add(normal, scale(toEye, leastCosine - cos)));
};

/** Where the eye's ray goes on from a sheen. */
export interface WayOn {
  readonly ray: Ray;
  /** What the luminance met there counts for. */
  readonly weight: Triple;
  /** Density per steradian that it was drawn with; Infinity from a mirror, which has one way on. */
  readonly density: number;
}

/**
 * The way on of the eye's ray from a mirror, or one way from a rougher sheen, drawn as often as its facets are seen. It
 * never goes under the face, whatever way the shading normal leans: it runs along it then.
 *
 * @param numbers two in [0, 1); null takes the middle facet, which lies along the surface
 * @returns null where the facet sends the eye's ray into other facets
 */
export const wayOn = (surface: SurfacePoint, sheen: Sheen, numbers: readonly [number, number] | null): WayOn | null => {
  const { toEye, face, shadowOrigin: origin } = surface;
  const normal = sheenNormal(surface);
  const cosEye = dot(normal, toEye);
  const { alpha } = sheen;
  if (alpha === 0) {
    const direction = lifted(mirroredBy(normal, toEye), face);
    return { ray: { origin, direction }, weight: fresnel(sheen, cosEye), density: Number.POSITIVE_INFINITY };
  }
  const facet = numbers ? seenFacet(alpha, normal, toEye, ...numbers) : normal;
  const way = mirroredBy(facet, toEye);
  const cosWay = dot(normal, way);
  if (cosWay <= 0) return null;
  const share = mirroredShare(alpha, cosEye, cosWay);
  const [r, g, b] = fresnel(sheen, Math.min(dot(facet, toEye), 1));
  return {
    ray: { origin, direction: lifted(way, face) },
    weight: [r * share, g * share, b * share],
    density: mirroredDensity(alpha, normal, toEye, way),
  };
};
