import type { Scheme } from '../setup/schema/setup.ts';
import { ratioFromStops, stopsFromRatio } from '../units/stops.ts';
import type { BlendPart } from './blend-parts.ts';

/** Level of a place as the blend has it, from that of each frame that counts there; twin of `blendPictures`. */
export const blendedStops = (
  mode: Scheme['blend']['mode'],
  parts: readonly BlendPart[],
  levelOf: (part: BlendPart) => number | null,
): number => {
  const levels = parts.map((part) => part.weight * ratioFromStops(levelOf(part) ?? Number.NEGATIVE_INFINITY));
  const sum = levels.reduce((total, level) => total + level, 0);
  const weight = parts.reduce((total, part) => total + part.weight, 0);
  return stopsFromRatio(mode === 'lighten' ? Math.max(0, ...levels) : mode === 'add' ? sum : sum / weight);
};
