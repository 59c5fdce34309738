import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, basisAround, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { type Beam, beamPeakPerLumen, intensityPerLumen, isMeasured } from './beam.ts';

/** Where a lamp stands and which way its axis points, in world axes. */
export interface Pose {
  readonly position: Vec3;
  /** Unit. */
  readonly axis: Vec3;
}

/**
 * The shining part of a lamp. Light leaves evenly from all of its surface; each spot of it has the lamp's whole beam.
 * - `point` has no size and uses `beam`;
 * - `disc` and `rectangle` face along the axis and use `beam`;
 * - `sphere` is an even Lambertian globe; `tube` an even Lambertian cylinder square to the axis, level where it can be,
 *   its ends dark.
 */
export type EmitterShape = 'point' | 'disc' | 'rectangle' | 'sphere' | 'tube';

/** What hangs in front of a lamp. */
export interface LampFront {
  /** Share of the light that cloth sends on as a flat white sheet does, 0 to 1; points, discs and rectangles only. */
  readonly spreadShare: number;
  /** Cosine of the half angle of the cone that a snoot lets pass; -1 without one. What it stops is lost. */
  readonly cosSnoot: number;
}

export interface Emitter {
  readonly shape: EmitterShape;
  /** Disc and sphere: radius. Rectangle: half width. Tube: half length. Metres. */
  readonly halfWidthMetres: number;
  /** Rectangle: half height. Tube: radius. Metres; 0 otherwise. */
  readonly halfHeightMetres: number;
  readonly beam: Beam;
  /** Left out for a bare lamp. */
  readonly front?: LampFront;
}

/** A spot on an emitter with, on round ones, its outward normal; null for flat ones and for the middle of round ones. */
export interface EmitterSpot {
  readonly spot: Vec3;
  readonly normal: Vec3 | null;
}

/** Axes of a lamp: `first` level where it can be, `second` square to it, so that first x second = axis. */
export const axesOf = (pose: Pose): { first: Vec3; second: Vec3; axis: Vec3 } => ({
  ...basisAround(pose.axis),
  axis: pose.axis,
});

/** Shining surface in square metres; 0 for a point. */
export const emitterArea = ({ shape, halfWidthMetres: w, halfHeightMetres: h }: Emitter): number => {
  switch (shape) {
    case 'point':
      return 0;
    case 'disc':
      return Math.PI * w * w;
    case 'rectangle':
      return 4 * w * h;
    case 'sphere':
      return 4 * Math.PI * w * w;
    case 'tube':
      return 4 * Math.PI * w * h;
  }
};

/**
 * A spot on the emitter for two numbers in [0, 1); (0.5, 0.5) is the middle, which stands for the whole lamp. Spots are
 * even over the surface.
 */
export const emitterSpot = (emitter: Emitter, pose: Pose, u: number, v: number): EmitterSpot => {
  const { shape, halfWidthMetres: w, halfHeightMetres: h } = emitter;
  const { position } = pose;
  const isMiddle = u === 0.5 && v === 0.5;
  if (shape === 'point' || isMiddle) return { spot: position, normal: null };
  const turn = 2 * Math.PI * v;
  if (shape === 'sphere') {
    const y = 1 - 2 * u;
    const r = Math.sqrt(Math.max(1 - y * y, 0));
    const normal: Vec3 = [r * Math.cos(turn), y, r * Math.sin(turn)];
    return { spot: add(position, scale(normal, w)), normal };
  }
  const { first, second, axis } = axesOf(pose);
  if (shape === 'tube') {
    const normal = add(scale(second, Math.cos(turn)), scale(axis, Math.sin(turn)));
    return { spot: add(add(position, scale(first, (2 * u - 1) * w)), scale(normal, h)), normal };
  }
  const [a, b] = shape === 'disc' ? discFromSquare(u, v).map((x) => x * w) : [(2 * u - 1) * w, (2 * v - 1) * h];
  return { spot: add(add(position, scale(first, a as number)), scale(second, b as number)), normal: null };
};

/**
 * Intensity in candela per lumen that a spot sends in a direction.
 *
 * @param direction unit, away from the lamp
 * @param normal as `emitterSpot` gives it
 */
export const spotIntensityPerLumen = (emitter: Emitter, pose: Pose, direction: Vec3, normal: Vec3 | null): number => {
  const { shape, beam, front } = emitter;
  const along = dot(pose.axis, direction);
  if (front && along < front.cosSnoot) return 0;
  if (normal) return Math.max(dot(normal, direction), 0) / Math.PI;
  if (shape === 'sphere') return 1 / (4 * Math.PI);
  if (shape === 'tube') {
    const { first } = axesOf(pose);
    return Math.sqrt(Math.max(1 - dot(first, direction) ** 2, 0)) / Math.PI ** 2;
  }
  // lobes are the same all round: the angle is dear and only measured beams ask for it
  const bare = intensityPerLumen(beam, along, isMeasured(beam) ? roundAxis(pose, direction) : 0);
  return front ? bare + front.spreadShare * (Math.max(along, 0) / Math.PI - bare) : bare;
};

/** Angle of a direction round a lamp's axis: 0 along `first`, counter-clockwise seen from behind the lamp. */
const roundAxis = (pose: Pose, direction: Vec3): number => {
  const { first, second } = axesOf(pose);
  return Math.atan2(-dot(second, direction), dot(first, direction));
};

/** Highest intensity per lumen of the lamp's own light. Cloth lowers it; it is then at most this. */
export const emitterPeakPerLumen = ({ shape, beam, front }: Emitter): number => {
  if (shape === 'sphere') return 1 / (4 * Math.PI);
  if (shape === 'tube') return 1 / Math.PI ** 2;
  const bare = beamPeakPerLumen(beam);
  return front ? bare + front.spreadShare * (1 / Math.PI - bare) : bare;
};

/** A pose that stands at `position` and points at `aim`; callers keep the two apart. */
export const poseToward = (position: Vec3, aim: Vec3): Pose => ({ position, axis: normalize(sub(aim, position)) });
