import { momentsOf } from '../readings/moments.ts';
import { mostPoleMetres } from '../units/body-height.ts';
import { feetOf } from '../world/holder.ts';
import type { PassRule } from './caution.ts';

/** A lamp in the hand, at least for a moment higher over who holds it than any pole. */
export const tooHigh: PassRule = ({ world, pass, light }) => {
  if (pass.held !== 'hand') return null;
  const heights = momentsOf(light).map((moment) => moment.position[1] - feetOf(world.stage, moment)[1]);
  const value = Math.max(...heights);
  const limit = mostPoleMetres;
  if (value <= limit) return null;
  // never told as the limit itself
  const metres = (Math.ceil(value * 10) / 10).toFixed(value < 10 ? 1 : 0);
  return {
    code: 'too-high',
    severity: 'warning',
    passId: pass.id,
    message: `${pass.name}: its lamp is ${metres} m over the feet of whoever holds it, and one person holds up a pole of about ${limit} m at most. Lower it, or have it stand on a mast. Keep poles and masts well away from power lines.`,
    value,
    limit,
  };
};
