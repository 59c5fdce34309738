import { firstStroke } from '../../../core/passes/stroke.ts';
import type { Pass } from '../../../core/setup/schema/setup.ts';

/** When a moving lamp turns back, and when it is at the waypoints of its first stroke; seconds after the shutter opens. */
export const wayMarks = (pass: Pass): { readonly turns: readonly number[]; readonly waypoints: readonly number[] } => {
  const { strokes, waypoints } = pass;
  if (waypoints.length === 1) return { turns: [], waypoints: [] };
  const { on, off, seconds } = firstStroke(pass);
  return {
    turns: Array.from({ length: strokes - 1 }, (_, i) => on + (i + 1) * seconds),
    // those at its ends are the bar's own
    waypoints: waypoints.map(({ time }) => time).filter((time) => time > on + 1e-6 && time < off - 1e-6),
  };
};
