import { dot, length, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { type Emitter, type Pose, poseToward, spotIntensityPerLumen } from './emitter.ts';
import { facingSpot } from './facing-spot.ts';

/** Where light falls, and the unit normal that the cosine is taken with. */
export interface Plate {
  readonly place: Vec3;
  readonly normal: Vec3;
}

/** One sample of a lamp's light on a surface with nothing in between, and the way to the spot that it came from. */
export interface OpenSample {
  /** Per lumen. */
  readonly lux: number;
  /** Unit. */
  readonly toLamp: Vec3;
  readonly distance: number;
  /** Of the spot, as `facingSpot` gives both. */
  readonly spotNormal: Vec3 | null;
  readonly crowding: number;
}

/** Inverse square and cosine from one spot of a lamp. Two numbers in [0, 1) choose the spot. */
export const openLampSample = (
  emitter: Emitter,
  pose: Pose,
  { place, normal }: Plate,
  u: number,
  v: number,
): OpenSample => {
  const found = facingSpot(emitter, pose, place, u, v);
  const way = sub(found.spot, place);
  const distance = Math.max(length(way), 1e-4);
  const toLamp = scale(way, 1 / distance);
  const cosReceiver = dot(normal, toLamp);
  const { normal: spotNormal, crowding } = found;
  if (cosReceiver <= 0) return { lux: 0, toLamp, distance, spotNormal, crowding };
  const intensity = spotIntensityPerLumen(emitter, pose, scale(toLamp, -1), spotNormal);
  return { lux: (intensity * cosReceiver) / (distance ** 2 * crowding), toLamp, distance, spotNormal, crowding };
};

/**
 * Light of a whole lamp on a surface with nothing in between, lux per lumen: the mean over a grid of its spots.
 *
 * @param grid spots along each side: even, so that none is the middle, which stands for all. 8 is good to a few per cent
 *   close to a globe and far better elsewhere
 */
export const openLux = (emitter: Emitter, pose: Pose, plate: Plate, grid = 8): number => {
  let sum = 0;
  for (let i = 0; i < grid; i++)
    for (let j = 0; j < grid; j++) sum += openLampSample(emitter, pose, plate, (i + 0.5) / grid, (j + 0.5) / grid).lux;
  return sum / grid ** 2;
};

/** How far a lamp's skin stands out from its middle along the axis, metres. */
const skinMetres = ({ shape, halfWidthMetres, halfHeightMetres }: Emitter): number =>
  shape === 'sphere' ? halfWidthMetres : shape === 'tube' ? halfHeightMetres : 0;

/** For a number that the lamp's whole output hangs on. */
const fineGrid = 64;

/** What a meter shows one metre in front of a lamp's skin, facing it, lux per lumen. A large lamp is no point from there. */
export const luxAtOneMetrePerLumen = (emitter: Emitter): number => {
  const plate: Plate = { place: [0, 0, -1 - skinMetres(emitter)], normal: [0, 0, 1] };
  return openLux(emitter, poseToward([0, 0, 0], [0, 0, -1]), plate, fineGrid);
};
