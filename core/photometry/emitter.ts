import { add, basisAround, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { type Beam, intensityPerLumen } from './beam.ts';

/** Where a lamp stands and which way its axis points, in world axes. */
export interface Pose {
  readonly position: Vec3;
  /** Unit. */
  readonly axis: Vec3;
}

/**
 * The shining part of a lamp. Light leaves evenly from all of its surface; each spot of it has the lamp's whole beam.
 * - `disc` and `rectangle` face along the axis and use `beam`;
 * - `sphere` is an even Lambertian globe; `tube` an even Lambertian line square to the axis, level where it can be.
 */
export type EmitterShape = 'disc' | 'rectangle' | 'sphere' | 'tube';

export interface Emitter {
  readonly shape: EmitterShape;
  /** Disc and sphere: radius. Rectangle: half width. Tube: half length. Metres. */
  readonly halfWidthMetres: number;
  /** Rectangle: half height. Metres; 0 otherwise. */
  readonly halfHeightMetres: number;
  readonly beam: Beam;
}

/** Square to disc, keeping neighbours together and the middle in the middle (Shirley and Chiu 1997). */
export const discFromSquare = (u: number, v: number): readonly [number, number] => {
  const a = 2 * u - 1;
  const b = 2 * v - 1;
  if (a === 0 && b === 0) return [0, 0];
  const wide = Math.abs(a) > Math.abs(b);
  const radius = wide ? a : b;
  const turn = wide ? (Math.PI / 4) * (b / a) : Math.PI / 2 - (Math.PI / 4) * (a / b);
  return [radius * Math.cos(turn), radius * Math.sin(turn)];
};

/**
 * A spot on the emitter for two numbers in [0, 1); (0.5, 0.5) is the middle.
 *
 * @returns the spot and, for a sphere, its outward normal; a sphere's middle is its centre, with no normal
 */
export const emitterSpot = (
  emitter: Emitter,
  pose: Pose,
  u: number,
  v: number,
): { spot: Vec3; normal: Vec3 | null } => {
  const { halfWidthMetres: w, halfHeightMetres: h } = emitter;
  if (emitter.shape === 'sphere') {
    if (u === 0.5 && v === 0.5) return { spot: pose.position, normal: null };
    const y = 1 - 2 * u;
    const r = Math.sqrt(Math.max(1 - y * y, 0));
    const normal: Vec3 = [r * Math.cos(2 * Math.PI * v), y, r * Math.sin(2 * Math.PI * v)];
    return { spot: add(pose.position, scale(normal, w)), normal };
  }
  const { first, second } = basisAround(pose.axis);
  const [a, b] = emitter.shape === 'disc' ? discFromSquare(u, v).map((x) => x * w) : [(2 * u - 1) * w, (2 * v - 1) * h];
  const across = add(pose.position, scale(first, a as number));
  return { spot: emitter.shape === 'tube' ? across : add(across, scale(second, b as number)), normal: null };
};

/**
 * Intensity in candela per lumen that a spot sends in a direction.
 *
 * @param direction unit, away from the lamp
 * @param normal the spot's normal on a sphere, null for its centre (even in all directions) and for the other shapes
 */
export const spotIntensityPerLumen = (emitter: Emitter, pose: Pose, direction: Vec3, normal: Vec3 | null): number => {
  if (emitter.shape === 'sphere') return normal ? Math.max(dot(normal, direction), 0) / Math.PI : 1 / (4 * Math.PI);
  if (emitter.shape === 'tube') {
    const along = dot(basisAround(pose.axis).first, direction);
    return Math.sqrt(Math.max(1 - along * along, 0)) / Math.PI ** 2;
  }
  return intensityPerLumen(emitter.beam, dot(pose.axis, direction));
};

/**
 * What a ray sees of the bare emitter: distance along the ray and luminance in cd/m^2 per lumen; null when it misses or
 * looks at the back. Tubes are lines and are not seen.
 *
 * @param direction unit
 */
export const seenEmitter = (
  emitter: Emitter,
  pose: Pose,
  origin: Vec3,
  direction: Vec3,
): { t: number; luminancePerLumen: number } | null => {
  const offset = sub(pose.position, origin);
  if (emitter.shape === 'tube') return null;
  if (emitter.shape === 'sphere') {
    const along = dot(offset, direction);
    const r2 = emitter.halfWidthMetres ** 2;
    const gap2 = dot(offset, offset) - along * along;
    if (along <= 0 || gap2 > r2) return null;
    return { t: along - Math.sqrt(r2 - gap2), luminancePerLumen: 1 / (4 * Math.PI ** 2 * r2) };
  }
  const cosEmission = -dot(pose.axis, direction);
  if (cosEmission <= 1e-6) return null;
  const t = -dot(offset, pose.axis) / cosEmission;
  if (t <= 0) return null;
  const local = sub(scale(direction, t), offset);
  const { first, second } = basisAround(pose.axis);
  const [a, b] = [dot(local, first), dot(local, second)];
  const { halfWidthMetres: w, halfHeightMetres: h } = emitter;
  const inside = emitter.shape === 'disc' ? a * a + b * b <= w * w : Math.abs(a) <= w && Math.abs(b) <= h;
  if (!inside) return null;
  const area = emitter.shape === 'disc' ? Math.PI * w * w : 4 * w * h;
  return { t, luminancePerLumen: intensityPerLumen(emitter.beam, cosEmission) / (area * cosEmission) };
};

/** A pose that stands at `position` and points at `aim`; callers keep the two apart. */
export const poseToward = (position: Vec3, aim: Vec3): Pose => ({ position, axis: normalize(sub(aim, position)) });
