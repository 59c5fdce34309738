import type { Vec3 } from '../geometry/vec.ts';
import { lampDirection, placeAtClock } from '../readings/direction.ts';
import type { Camera, Pass, Position, Waypoint } from '../setup/schema/setup.ts';
import { clockText } from '../units/clock.ts';
import { documentFromWorld, worldFromDocument } from '../world/axes.ts';
import { SweepError } from './sweep-error.ts';
import { sweepLimits } from './sweep-plan.ts';

/** Where a pass stands on the clock round its aim; its first waypoint, for a lamp that is walked. */
export interface Stand {
  readonly clockHours: number;
  /** "3:00". */
  readonly clock: string;
  readonly levelDistanceMetres: number;
  readonly heightMetres: number;
  /** The document's place for another clock, level distance or height. */
  readonly placeAt: (clockHours: number, levelDistanceMetres: number, heightMetres: number) => Position;
}

export const standOf = ({ waypoints }: Pass, camera: Camera): Stand => {
  const { position, aim } = waypoints[0] as Waypoint;
  const [worldAim, worldCamera]: [Vec3, Vec3] = [worldFromDocument(aim), worldFromDocument(camera.position)];
  const { clockHours } = lampDirection(worldAim, worldCamera, worldFromDocument(position));
  return {
    clockHours,
    clock: clockText(clockHours),
    levelDistanceMetres: Math.hypot(position[0] - aim[0], position[1] - aim[1]),
    heightMetres: position[2],
    placeAt: (hours, away, height) => documentFromWorld(placeAtClock(worldAim, worldCamera, hours, away, height)),
  };
};

/** Refuses a lamp that hangs straight over its aim: it has no bearing, and would be walked round on the spot. */
export const requireBearing = ({ levelDistanceMetres }: Stand): void => {
  const [least] = sweepLimits.distanceMetres;
  if (levelDistanceMetres < least)
    throw new SweepError(
      'place',
      `must be at least ${least} m level from the aim; the lamp hangs straight over or under it`,
    );
};
