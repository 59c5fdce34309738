import { midGreyRatioPerLuminanceSecond } from '../camera/exposure.ts';
import type { Triple } from '../colour/matrix.ts';
import type { WorldFrame, WorldLight } from '../world/world.ts';

/** Weight of a light's layer in a frame: strength x seconds x exposure, per channel; a layer times this is in mid-greys. */
export const layerWeight = (frame: WorldFrame, light: WorldLight): Triple => {
  const factor = light.seconds * midGreyRatioPerLuminanceSecond(frame.exposure);
  return [light.strength[0] * factor, light.strength[1] * factor, light.strength[2] * factor];
};

/** First of the six dimensions of the hash that a frame's noise is drawn from, apart from those of the samples. */
export const noiseDimensionOf = (frame: number): number => 32 + 6 * frame;

/** What somebody who holds a lamp sends of moon and sky in a frame, in mid-greys, per channel; null where nobody is drawn. */
export const holderWeight = (frame: WorldFrame, light: WorldLight): Triple | null => {
  if (light.source.kind !== 'lamp' || !light.source.holder?.isDrawn) return null;
  const factor = light.seconds * midGreyRatioPerLuminanceSecond(frame.exposure);
  const [r, g, b] = light.holderLuminance ?? [0, 0, 0];
  return [r * factor, g * factor, b * factor];
};

/**
 * How much of a light's time the holders of a frame's lamps are there, one share a light in order, 0 to 1: what each takes
 * of it where they stand before the rest. Lamps held by hand are on while only their own holder is there, and have that in
 * their layer already.
 */
export const timeWithHolders = (frame: WorldFrame, light: WorldLight): number[] =>
  frame.lights.map((other) => {
    const isHeld = holderWeight(frame, light) !== null;
    if (isHeld || holderWeight(frame, other) === null || light.seconds <= 0) return 0;
    const together = Math.min(light.lit[1], other.lit[1]) - Math.max(light.lit[0], other.lit[0]);
    return Math.min(Math.max(together, 0) / light.seconds, 1);
  });
