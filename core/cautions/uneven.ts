import { nearToFar } from '../readings/near-to-far.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/**
 * The light falls off too much from the near to the far end of the subject. Only where the inverse square alone does so
 * too, or standing farther off would not help, and where the lamp does not rake the subject, which is never even.
 */
export const uneven: PassRule = ({ world, pass, light, reading }) => {
  const { unevenStops: limit, rakingDegrees } = limits;
  if ((reading.fallOffStops ?? 0) <= limit) return null;
  const along = nearToFar(world, light, reading.rim.subjectId);
  if (!along || along.nearOverFarStops <= limit || along.grazingDegrees < rakingDegrees) return null;
  const value = along.nearOverFarStops;
  return {
    code: 'uneven',
    severity: 'note',
    passId: pass.id,
    message: `${pass.name}: the near end of “${along.subjectName}” gets ${value.toFixed(1)} stops more light than its far end. Stand farther off, or sweep and stay longer on the far end.`,
    value,
    limit,
  };
};
