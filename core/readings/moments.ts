import type { Vec3 } from '../geometry/vec.ts';
import { placeOnPath, type WorldLight } from '../world/world.ts';

/** Where a lamp is at a moment, and what it points at, world metres. */
export interface Moment {
  readonly position: Vec3;
  readonly aim: Vec3;
}

/** How many moments of a moving pass rules look at. */
const momentCount = 9;

const momentAt = (light: WorldLight, share: number): Moment => {
  if (light.source.kind !== 'lamp') throw new Error('only lamps have a place');
  const [on, off] = light.source.onOff;
  return placeOnPath(light.source.path, on + (off - on) * share);
};

/** Half-way through the on-time. Moving passes are read there, except for the dose, which is summed. */
export const middleMoment = (light: WorldLight): Moment => momentAt(light, 0.5);

/** Moments spread over the on-time, its ends included; one for a lamp that stands. Rules judge by the worst of them. */
export const momentsOf = (light: WorldLight): Moment[] => {
  const stands = light.source.kind === 'lamp' && light.source.path.length === 1;
  return Array.from({ length: stands ? 1 : momentCount }, (_, i) =>
    momentAt(light, stands ? 0.5 : i / (momentCount - 1)),
  );
};
