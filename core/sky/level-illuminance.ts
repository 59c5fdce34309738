import type { Vec3 } from '../geometry/vec.ts';

/** Rings of equal share of a level surface's light, and directions on each. */
const [rings, turns] = [16, 32] as const;

/** Directions of a level surface's light, each counting the same: by the cosine law, straight up is met most. */
const directions: readonly Vec3[] = Array.from({ length: rings * turns }, (_, i) => {
  const level = Math.sqrt((Math.floor(i / turns) + 0.5) / rings);
  // each ring half a step on from the one before, so that nothing narrow falls between all of them
  const turn = (2 * Math.PI * ((i % turns) + (Math.floor(i / turns) % 2) / 2)) / turns;
  return [level * Math.sin(turn), Math.sqrt(1 - level * level), -level * Math.cos(turn)];
});

/**
 * Illuminance on level ground under a sky, lux: pi times the mean of the luminance, taken by the cosine law. A sky without
 * small bright parts comes out to a per cent; the moon's disc and stars are not to be in it.
 *
 * @param luminanceCdM2 in a unit direction of the scene's axes
 */
export const levelIlluminance = (luminanceCdM2: (toward: Vec3) => number): number =>
  (Math.PI * directions.reduce((sum, toward) => sum + luminanceCdM2(toward), 0)) / directions.length;
