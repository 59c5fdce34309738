import { type LampPlace, placeAtShare, type WorldLight } from '../world/world.ts';

/** How many moments of a moving pass rules look at. */
const momentCount = 9;

const momentAt = (light: WorldLight, share: number): LampPlace => {
  if (light.source.kind !== 'lamp') throw new Error('only lamps have a place');
  return placeAtShare(light.source, share);
};

/** Half-way through the on-time. Moving passes are read there, except for the dose, which is summed. */
export const middleMoment = (light: WorldLight): LampPlace => momentAt(light, 0.5);

/** Moments spread over the on-time, its ends included; one for a lamp that stands. Rules judge by the worst of them. */
export const momentsOf = (light: WorldLight): LampPlace[] => {
  const stands = light.source.kind === 'lamp' && light.source.path.length === 1;
  return Array.from({ length: stands ? 1 : momentCount }, (_, i) =>
    momentAt(light, stands ? 0.5 : i / (momentCount - 1)),
  );
};
