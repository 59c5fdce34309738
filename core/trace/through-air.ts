import type { Ray } from '../camera/camera-view.ts';
import { add, basisAround, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import { type Air, throughAir } from '../world/air.ts';
import { forwardness } from '../world/air-light.ts';

/** Way through haze that a level look takes at most, metres: the earth is round, and banks end. */
export const farthestMetres = 20_000;

/** How far a ray goes in the haze when it meets nothing, metres. */
export const metresInAir = ({ topMetres }: Air, { origin, direction }: Ray): number => {
  const up = direction[1];
  if (origin[1] >= topMetres) return 0;
  return up > 1e-6 ? Math.min((topMetres - origin[1]) / up, farthestMetres) : farthestMetres;
};

/** How far a ray goes in the haze before it meets something at a distance, metres; 0 where the air is clear. */
export const metresBefore = (air: Air | null, ray: Ray, distance: number): number =>
  air ? Math.min(distance, metresInAir(air, ray)) : 0;

/** Share of the light of moon or sky that gets straight through the haze along a ray that meets nothing. */
export const throughToSky = (air: Air | null, ray: Ray): number => (air ? throughAir(air, metresInAir(air, ray)) : 1);

/** A direction round an axis, as often as light from there is scattered along it. Two numbers in [0, 1). */
export const scatteredDirection = (axis: Vec3, u: number, v: number): Vec3 => {
  const g = forwardness;
  const cosine = (1 + g * g - ((1 - g * g) / (1 - g + 2 * g * u)) ** 2) / (2 * g);
  const { first, second } = basisAround(axis);
  const r = Math.sqrt(Math.max(1 - cosine * cosine, 0));
  const around = add(scale(first, r * Math.cos(2 * Math.PI * v)), scale(second, r * Math.sin(2 * Math.PI * v)));
  return normalize(add(scale(axis, cosine), around));
};
