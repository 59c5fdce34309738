import type { Triple } from '../../../core/colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { add, basisAround, scale, type Vec3 } from '../../../core/geometry/vec.ts';

/** Light of a sky on level ground, lux, in rings round a direction that close up on it: for narrow glows. */
export const luxRound = (sky: (toward: Vec3) => Triple, middle: Vec3, rings = 160, turns = 96): number => {
  const { first, second } = basisAround(middle);
  let sum = 0;
  for (let i = 0; i < rings; i++) {
    const u = (i + 0.5) / rings;
    const r = Math.PI * u ** 3;
    const weight = (Math.sin(r) * 3 * Math.PI * u * u * 2 * Math.PI) / (rings * turns);
    for (let j = 0; j < turns; j++) {
      const turn = (2 * Math.PI * (j + 0.5)) / turns;
      const aside = add(scale(first, Math.cos(turn)), scale(second, Math.sin(turn)));
      const toward = add(scale(middle, Math.cos(r)), scale(aside, Math.sin(r)));
      if (toward[1] > 0) sum += weight * toward[1] * luminanceOfLinearSrgb(sky(toward));
    }
  }
  return sum;
};
