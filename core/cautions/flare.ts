import { flareReading } from '../readings/flare-reading.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** The lamp shines on the lens from just outside the picture. Inside it, `lamp-in-frame` says so. */
export const flare: PassRule = ({ world, worldFrame, pass, light }) => {
  const read = flareReading(world, light, worldFrame, limits.flareOutsideDegrees);
  if (!read || read.veilStops <= limits.flareVeilStops) return null;
  const { veilStops: value, outsideDegrees } = read;
  return {
    code: 'flare',
    severity: 'note',
    passId: pass.id,
    message: `${pass.name}: the lamp is ${outsideDegrees.toFixed(0)}° outside the picture and shines on the lens: expect ghosts, and a veil about ${Math.abs(value).toFixed(0)} stops ${value < 0 ? 'under' : 'over'} mid-grey. Shade the lens with a hat or a hood, put a snoot on the lamp, or turn it away.`,
    value,
    limit: limits.flareVeilStops,
  };
};
