import type { Pass } from '../../../core/setup/schema/setup.ts';

/** When a moving lamp turns back, and when it is at the waypoints of its first stroke; seconds after the shutter opens. */
export const wayMarks = ({
  on,
  off,
  strokes,
  waypoints,
}: Pass): { readonly turns: readonly number[]; readonly waypoints: readonly number[] } => {
  if (waypoints.length === 1) return { turns: [], waypoints: [] };
  const stroke = (off - on) / strokes;
  return {
    turns: Array.from({ length: strokes - 1 }, (_, i) => on + (i + 1) * stroke),
    // those at its ends are the bar's own
    waypoints: waypoints.map(({ time }) => time).filter((time) => time > on + 1e-6 && time < on + stroke - 1e-6),
  };
};
