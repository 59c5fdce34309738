import { pathSpeed } from '../passes/path-speed.ts';
import { firstStroke } from '../passes/stroke.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

/** A lamp that is carried faster than whoever holds it walks. */
export const tooQuick: SchemeRule = ({ setup: { walking }, frames }) =>
  frames.flatMap(({ frame, passes }) =>
    passes.flatMap(({ pass }) => {
      const value = pass.held === 'hand' ? (pathSpeed(pass.waypoints)?.lampMetresPerSecond[1] ?? 0) : 0;
      const limit = walking.metresPerSecond;
      if (value <= limit * limits.quickerThanWalking) return [];
      const seconds = Math.ceil((firstStroke(pass).seconds * value) / limit);
      const strokes = pass.strokes > 1 ? ' each stroke' : '';
      return [
        {
          code: 'too-quick',
          severity: 'warning' as const,
          passId: pass.id,
          frameId: frame.id,
          message: `${pass.name}: its lamp is carried at up to ${value.toFixed(1)} m/s; you walk ${limit} m/s. Give it ${seconds} s${strokes}, a shorter way, or even speed.`,
          value,
          limit,
        },
      ];
    }),
  );
