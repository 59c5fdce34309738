import { add, cross, dot, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { axesOf, type Emitter, emitterArea, type Pose, spotIntensityPerLumen } from './emitter.ts';
import { crowdingAt } from './facing-spot.ts';

/** Distance along a ray to the emitter's surface, with the normal there on round ones; null when missed or seen from behind. */
const meetEmitter = (
  emitter: Emitter,
  pose: Pose,
  origin: Vec3,
  direction: Vec3,
): { t: number; normal: Vec3 | null } | null => {
  const { shape, halfWidthMetres: w, halfHeightMetres: h } = emitter;
  const offset = sub(pose.position, origin);
  if (shape === 'point') return null;
  if (shape === 'sphere') {
    const along = dot(offset, direction);
    const gap2 = dot(offset, offset) - along * along;
    if (along <= 0 || gap2 > w * w) return null;
    const t = along - Math.sqrt(w * w - gap2);
    if (t <= 0) return null;
    return { t, normal: scale(sub(scale(direction, t), offset), 1 / w) };
  }
  const { first, second, axis } = axesOf(pose);
  if (shape === 'tube') {
    // the ray and the offset without their parts along the tube
    const [d, o] = [direction, offset].map((v) => sub(v, scale(first, dot(v, first)))) as [Vec3, Vec3];
    const speed2 = dot(d, d);
    const gap2 = dot(cross(o, d), cross(o, d)) / Math.max(speed2, 1e-12);
    if (speed2 < 1e-12 || gap2 > h * h) return null;
    const t = (dot(o, d) - Math.sqrt((h * h - gap2) * speed2)) / speed2;
    if (t <= 0 || Math.abs(t * dot(direction, first) - dot(offset, first)) > w) return null;
    return { t, normal: scale(sub(scale(d, t), o), 1 / h) };
  }
  const cosEmission = -dot(axis, direction);
  if (cosEmission <= 1e-6) return null;
  const t = -dot(offset, axis) / cosEmission;
  if (t <= 0) return null;
  const local = sub(scale(direction, t), offset);
  const [a, b] = [dot(local, first), dot(local, second)];
  const isInside = shape === 'disc' ? a * a + b * b <= w * w : Math.abs(a) <= w && Math.abs(b) <= h;
  return isInside ? { t, normal: null } : null;
};

/** What a ray sees of a bare emitter. */
export interface SeenEmitter {
  /** Distance along the ray. */
  readonly t: number;
  /** cd/m^2 per lumen. */
  readonly luminancePerLumen: number;
  /**
   * How often spots drawn on the lamp for the ray's origin lie there: as if all of them lay evenly on so many square metres
   * that face it.
   */
  readonly areaAcross: number;
}

/**
 * What a ray sees of the bare emitter; null when it misses or looks at the back. A point has no size and is not seen.
 *
 * @param direction unit
 */
export const seenEmitter = (emitter: Emitter, pose: Pose, origin: Vec3, direction: Vec3): SeenEmitter | null => {
  const met = meetEmitter(emitter, pose, origin, direction);
  if (!met) return null;
  const out = scale(direction, -1);
  const cosEmission = dot(met.normal ?? pose.axis, out);
  const intensity = spotIntensityPerLumen(emitter, pose, out, met.normal);
  const areaShown = emitterArea(emitter) * Math.max(cosEmission, 1e-6);
  const spot = add(origin, scale(direction, met.t));
  const crowding = crowdingAt(emitter, pose, origin, { spot, normal: met.normal });
  return { t: met.t, luminancePerLumen: intensity / areaShown, areaAcross: areaShown / Math.max(crowding, 1e-6) };
};

/**
 * `areaAcross` of a spot that `facingSpot` gave for where it is seen from; of the middle of a round lamp, which stands for
 * all of it, so that intensity over this is the luminance too. 0 where a ray from there sees nothing shine: from behind,
 * and of a point.
 *
 * @param out unit, from the spot to where it is seen from
 */
export const spotAreaAcross = (
  emitter: Emitter,
  pose: Pose,
  out: Vec3,
  { spotNormal: normal, crowding }: { readonly spotNormal: Vec3 | null; readonly crowding: number },
): number => {
  const area = emitterArea(emitter) / crowding;
  const isRound = emitter.shape === 'sphere' || emitter.shape === 'tube';
  if (isRound && !normal)
    return emitter.shape === 'sphere' ? area / 4 : area * (Math.hypot(...cross(axesOf(pose).first, out)) / Math.PI);
  return area * Math.max(dot(normal ?? pose.axis, out), 0);
};
