import type { MagneticNorth } from './magnetic.ts';

const noneWords = {
  date: 'No magnetic model covers this date: set true bearings.',
  'near-pole': 'So near a magnetic pole a compass is no guide: set true bearings.',
  place: 'No compass bearing for this place.',
} as const;

/** "A compass points 11.9° east of true north (WMM-2025, valid to Nov 2029)." */
export const compassWords = (north: MagneticNorth): string => {
  if (north.kind === 'none') return noneWords[north.reason];
  const { declinationDegrees, modelName, validUntilMilliseconds, isWeak } = north;
  const until = new Date(validUntilMilliseconds).toLocaleDateString('en-GB', {
    month: 'short',
    year: 'numeric',
    timeZone: 'UTC',
  });
  const size = Math.abs(declinationDegrees).toFixed(1);
  const points =
    size === '0.0' ? 'to true north' : `${size}° ${declinationDegrees > 0 ? 'east' : 'west'} of true north`;
  const weak = isWeak ? ' It is slow and easily led astray there.' : '';
  return `A compass points ${points} (${modelName}, valid to ${until}).${weak} Iron near it and lava rock turn it.`;
};
