import type { PassRule } from './caution.ts';
import { wayOut } from './exposure.ts';
import { limits } from './limits.ts';

/** A lamp that gives less than this under the most it can is weak by choice, as a fill is; stops. */
const nearlyAll = 1;

/**
 * The night level is out of reach: too bright at the lowest level and the shortest count, or too dark with all that the
 * frame can hold. Said only where the target now comes out wrong, not of what is kept weak on purpose.
 */
export const unreachableLevel: PassRule = ({ pass, reading }) => {
  const { missStops: value, wantedStops } = reading.count;
  const stops = reading.target?.stops ?? null;
  const limit = limits.unreachableStops;
  if (value === null || stops === null || Math.abs(value) <= limit) return null;
  const isWrong =
    value > 0
      ? stops > wantedStops + limit
      : stops >= wantedStops + value - nearlyAll && reading.offAxisDegrees < limits.backLightDegrees;
  if (!isWrong) return null;
  return {
    code: 'unreachable-level',
    severity: 'warning',
    passId: pass.id,
    message: `${pass.name}: ${wayOut(reading)}`,
    value,
    limit: Math.sign(value) * limit,
  };
};
