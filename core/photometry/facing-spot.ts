import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, basisAround, dot, length, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { axesOf, type Emitter, type EmitterSpot, emitterSpot, type Pose } from './emitter.ts';

/** A spot drawn for one place, and how many times denser spots lie there than spread evenly over the skin. */
export interface FacingSpot extends EmitterSpot {
  readonly crowding: number;
}

/** A place no farther off than this many radii of a round lamp counts as on its skin: no spots are sought that face it. */
const onSkin = 1 + 1e-4;
/** Least cosine between the skin and the way to the place, so that nothing is divided by 0 at the rim. */
const leastCosine = 1e-4;

/** Normal of a round skin where a ray meets it `sin` of the way from the middle of the outline to its rim. */
const normalAt = (toward: Vec3, aside: Vec3, sin: number, cos: number, sinRay: number, cosRay: number): Vec3 =>
  add(scale(toward, cos * cosRay + sin * sinRay), scale(aside, sin * cosRay - cos * sinRay));

/** Where a place lies that looks at a round skin of radius `r`; null on the skin. `offset` is from its middle. */
const viewOf = (offset: Vec3, r: number): { gap: number; toward: Vec3; sinRim: number } | null => {
  const gap = length(offset);
  return gap <= r * onSkin ? null : { gap, toward: scale(offset, 1 / gap), sinRim: r / gap };
};

/** The angle that a tube takes up along itself, seen from so far off its skin; `start` is its end from the place's foot. */
const rangeOf = (start: number, metres: number, off: number): number =>
  Math.atan2(off * metres, off * off + start * (start + metres));

/** Crowding of a spot so far along from the place's foot on the tube and so far off square to it. */
const tubeCrowding = (
  { halfWidthMetres: w, halfHeightMetres: r }: Emitter,
  start: number,
  past: number,
  off: number,
  cos: number,
  rim: number,
): number => {
  const along = (off * 2 * w) / (rangeOf(start, 2 * w, off) * (off * off + past * past));
  return (along * Math.PI * r * Math.max(cos, leastCosine)) / (rim * off);
};

/** Evenly by the angle across the tube, then by the angle along it (as Kulla and Fajardo 2012 do along a ray). */
const tubeSpot = (emitter: Emitter, pose: Pose, place: Vec3, u: number, v: number): FacingSpot | null => {
  const { halfWidthMetres: w, halfHeightMetres: r } = emitter;
  const { first, second, axis } = axesOf(pose);
  const offset = sub(place, pose.position);
  const foot = dot(offset, first);
  const view = viewOf(sub(offset, scale(first, foot)), r);
  if (!view) return null;
  const { gap, toward, sinRim } = view;
  const rim = Math.asin(sinRim);
  const ray = (2 * v - 1) * rim;
  const [sinRay, cosRay] = [Math.sin(ray), Math.cos(ray)];
  const sin = Math.min(Math.max(sinRay / sinRim, -1), 1);
  const cos = Math.sqrt(1 - sin * sin);
  const off = gap * cosRay - r * cos;
  const start = -w - foot;
  const turn = u * rangeOf(start, 2 * w, off);
  const [s, c] = [Math.sin(turn), Math.cos(turn)];
  const past = Math.min(
    Math.max((off * (start * c + off * s)) / Math.max(off * c - start * s, 1e-12), start),
    start + 2 * w,
  );
  // a quarter turn on from `toward`, round the tube
  const aside = sub(scale(axis, dot(toward, second)), scale(second, dot(toward, axis)));
  const normal = normalAt(toward, aside, sin, cos, sinRay, cosRay);
  const spot = add(add(pose.position, scale(first, past + foot)), scale(normal, r));
  return { spot, normal, crowding: tubeCrowding(emitter, start, past, off, cos, rim) };
};

/** What is left of 1 after the cosine of the rim: the globe's solid angle over 2 pi. */
const coneShare = (sinRim: number): number => sinRim ** 2 / (1 + Math.sqrt(1 - sinRim ** 2));

const sphereCrowding = (r: number, metres: number, cos: number, cone: number): number =>
  (2 * r * r * Math.max(cos, leastCosine)) / (metres * metres * cone);

/** Evenly over the solid angle that a globe takes up. */
const sphereSpot = (
  { halfWidthMetres: r }: Emitter,
  pose: Pose,
  place: Vec3,
  u: number,
  v: number,
): FacingSpot | null => {
  const view = viewOf(sub(place, pose.position), r);
  if (!view) return null;
  const { gap, toward, sinRim } = view;
  const cone = coneShare(sinRim);
  const [a, b] = discFromSquare(u, v) as [number, number];
  const out = Math.hypot(a, b);
  const below = out * out * cone;
  const [sinRay, cosRay] = [out * Math.sqrt(cone * (2 - below)), 1 - below];
  const sin = Math.min(sinRay / sinRim, 1);
  const cos = Math.sqrt(1 - sin * sin);
  const { first, second } = basisAround(toward);
  const aside = scale(add(scale(first, a), scale(second, b)), 1 / Math.max(out, 1e-9));
  const normal = normalAt(toward, aside, sin, cos, sinRay, cosRay);
  const crowding = sphereCrowding(r, gap * cosRay - r * cos, cos, cone);
  return { spot: add(pose.position, scale(normal, r)), normal, crowding };
};

/**
 * A spot on an emitter for light at a place, for two numbers in [0, 1); (0.5, 0.5) is the middle, which stands for the
 * whole lamp. On round lamps it faces the place and is drawn as often as it counts there; on flat ones, and for a place on
 * the skin, spots are even. Divide what the spot sends by its crowding.
 */
export const facingSpot = (emitter: Emitter, pose: Pose, place: Vec3, u: number, v: number): FacingSpot => {
  if (u === 0.5 && v === 0.5) return { spot: pose.position, normal: null, crowding: 1 };
  const { shape } = emitter;
  const facing =
    shape === 'tube'
      ? tubeSpot(emitter, pose, place, u, v)
      : shape === 'sphere'
        ? sphereSpot(emitter, pose, place, u, v)
        : null;
  if (facing) return facing;
  const { spot, normal } = emitterSpot(emitter, pose, u, v);
  return { spot, normal, crowding: 1 };
};

/** Crowding of `facingSpot` at a spot that faces the place, however it was found. */
export const crowdingAt = (emitter: Emitter, pose: Pose, place: Vec3, { spot, normal }: EmitterSpot): number => {
  if (!normal) return 1;
  const [offset, way] = [sub(place, pose.position), sub(place, spot)];
  if (emitter.shape === 'sphere') {
    const view = viewOf(offset, emitter.halfWidthMetres);
    const metres = length(way);
    return view
      ? sphereCrowding(emitter.halfWidthMetres, metres, dot(normal, way) / metres, coneShare(view.sinRim))
      : 1;
  }
  const { first } = axesOf(pose);
  const foot = dot(offset, first);
  const view = viewOf(sub(offset, scale(first, foot)), emitter.halfHeightMetres);
  if (!view) return 1;
  const past = -dot(way, first);
  const across = add(way, scale(first, past));
  const off = length(across);
  const start = -emitter.halfWidthMetres - foot;
  return tubeCrowding(emitter, start, past, off, dot(normal, across) / off, Math.asin(view.sinRim));
};
