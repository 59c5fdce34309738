import { mix, type Vec3 } from '../geometry/vec.ts';
import { type Pose, poseToward } from '../photometry/emitter.ts';
import type { Pass } from '../setup/schema/setup.ts';

/** Where a lamp is and what it points at, world metres. */
export interface LampPlace {
  readonly position: Vec3;
  readonly aim: Vec3;
}

/** A moment on a pass's way. In worlds made of setups time is counted in strokes of the way: 0 its start, 1 its end. */
export interface PathPoint extends LampPlace {
  readonly seconds: number;
}

/** Strokes of its way that a pass has gone at a time after the shutter opens, 0 when the lamp goes on. */
export const strokesGone = ({ on, off, strokes }: Pass, seconds: number): number =>
  ((seconds - on) * strokes) / (off - on);

/** Position and aim on a path at a time: straight and even between waypoints, at rest before the first and after the last. */
export const placeOnPath = (path: readonly PathPoint[], seconds: number): LampPlace => {
  const after = path.findIndex((point) => point.seconds > seconds);
  if (after <= 0) return (after < 0 ? path.at(-1) : path[0]) as PathPoint;
  const [a, b] = [path[after - 1] as PathPoint, path[after] as PathPoint];
  const t = (seconds - a.seconds) / (b.seconds - a.seconds);
  return { position: mix(a.position, b.position, t), aim: mix(a.aim, b.aim, t) };
};

/** A lamp's way, and when it shines in it. */
export interface LampWay {
  readonly path: readonly PathPoint[];
  readonly onOff: readonly [number, number];
}

/** Where a lamp is at a share of a stroke of its way, 0 to 1: over all strokes it is as long at each place as in one. */
export const placeAtShare = ({ path, onOff: [on, off] }: LampWay, share: number): LampPlace =>
  placeOnPath(path, on + (off - on) * share);

/** Where a pass's lamp is at a time after the shutter opens: strokes go there and back in turn; at rest while it is off. */
export const placeAtTime = (source: LampWay, pass: Pass, seconds: number): LampPlace => {
  const gone = Math.min(Math.max(strokesGone(pass, seconds), 0), pass.strokes);
  const whole = Math.min(Math.floor(gone), pass.strokes - 1);
  return placeAtShare(source, whole % 2 === 0 ? gone - whole : 1 - (gone - whole));
};

/**
 * The pose of a lamp source at a share of its on-time, 0 to 1. Where a path's position runs through its aim the lamp
 * points straight down for that moment.
 */
export const poseAt = (source: LampWay, share: number): Pose => {
  const { position, aim } = placeAtShare(source, share);
  const apart = Math.hypot(aim[0] - position[0], aim[1] - position[1], aim[2] - position[2]) > 1e-9;
  return apart ? poseToward(position, aim) : { position, axis: [0, -1, 0] };
};
