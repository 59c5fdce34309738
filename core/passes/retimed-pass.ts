import type { Pass } from '../setup/schema/setup.ts';
import { stretchedPath } from './stretch-path.ts';
import { firstStroke } from './stroke.ts';

/**
 * The pass lit from `on` to `off` instead. A lamp that moves goes the same way, stroke by stroke, faster or slower.
 *
 * @returns null where its path, cut to the time that it is lit, would begin or end on its own aim
 */
export const retimedPass = (pass: Pass, on: number, off: number): Pass | null => {
  const next = { ...pass, on, off };
  if (pass.waypoints.length === 1 || (on === pass.on && off === pass.off)) return next;
  const [before, now] = [firstStroke(pass), firstStroke(next)];
  const waypoints = stretchedPath(pass.waypoints, [before.on, before.off], [now.on, now.off]);
  return waypoints && { ...next, waypoints };
};
