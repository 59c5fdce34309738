import { stopsFromRatio } from '../units/stops.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';
import { isStarFrame } from './star-frame.ts';

/** Where one of these is said of a pass, the lamp is to be weaker anyway. */
const weakerAnyway = ['burnt', 'unreachable-level'];

/** A standing light in a star frame is brighter on its subject than a quarter moon. */
export const aboveQuarterMoon: SchemeRule = ({ scheme, frames }) =>
  frames.flatMap(({ frame, passes }) =>
    passes.flatMap(({ pass, light, reading, cautions }) => {
      const stands = pass.held === 'stand' && pass.off - pass.on >= limits.standingShare * frame.seconds;
      if (!stands || !isStarFrame(scheme, frame)) return [];
      const value = (reading.bestDoseLuxSeconds ?? 0) / light.seconds;
      const limit = limits.quarterMoonLux;
      if (value <= limit || cautions.some(({ code }) => weakerAnyway.includes(code))) return [];
      return [
        {
          code: 'above-quarter-moon',
          severity: 'note' as const,
          passId: pass.id,
          frameId: frame.id,
          message: `${pass.name}: a standing light with up to ${value.toPrecision(2)} lx on the subject; a quarter moon gives 0.01 to ${limit} lx. Some places allow no more: ask locally, or dim it by ${stopsFromRatio(value / limit).toFixed(1)} stops.`,
          value,
          limit,
        },
      ];
    }),
  );
