import type { Severity } from '../../../core/cautions/caution.ts';
import { limits } from '../../../core/cautions/limits.ts';
import type { PassTiming } from '../../../core/readings/timing-reading.ts';
import type { WalkLine } from '../../../core/readings/walk-lines.ts';
import type { Pass } from '../../../core/setup/schema/setup.ts';
import type { Before } from './turns.ts';

/** The walk to a pass on its frame's clock. */
export interface WalkFit {
  /** When one sets out: the pass before has ended. */
  readonly startSeconds: number;
  /** What it takes; null = no way leads there. */
  readonly walkSeconds: number | null;
  /** Time left over; negative = one comes too late. null where no way leads there. */
  readonly slackSeconds: number | null;
  /** How bad it is to come too late, as the caution about it has it; null where one does not. */
  readonly late: Severity | null;
  /** For the way from the camera: the delay that would do, whole seconds; null for other ways. */
  readonly delaySeconds: number | null;
}

/**
 * How the walk to a pass fits. When the lamps are on is known at once; how long a walk takes comes with the report.
 *
 * @param metresPerSecond how fast one walks
 * @returns null for the first pass that is held, for a stand, and until the walk has been worked out
 */
export const walkFit = (
  pass: Pass,
  before: Before | undefined,
  timing: PassTiming | undefined,
  metresPerSecond: number,
): WalkFit | null => {
  if (!timing || !before) return null;
  const { walkSeconds } = timing;
  const startSeconds = before.endSeconds;
  if (walkSeconds === null) return { startSeconds, walkSeconds, slackSeconds: null, late: null, delaySeconds: null };
  const slackSeconds = pass.on - startSeconds - walkSeconds;
  const isLate = slackSeconds < 0 && walkSeconds * metresPerSecond >= limits.stepMetres;
  const late = isLate ? (before.isWithinFrame ? 'danger' : 'warning') : null;
  return { startSeconds, walkSeconds, slackSeconds, late, delaySeconds: null };
};

/**
 * How the way from the camera to the first pass that is held fits: one sets out as the delay begins of the frame that is set
 * last before it. Where that is the first, it is never late, for the shutter can be set off from afar.
 *
 * @param opensSeconds when the pass's frame opens, from the first shutter
 * @param leavesSeconds when one leaves the camera, from the first shutter
 * @param set the frame that is set last before it
 */
export const cameraFit = (
  pass: Pass,
  { seconds: walkSeconds, metres }: Pick<WalkLine, 'seconds' | 'metres'>,
  opensSeconds: number,
  leavesSeconds: number,
  set: { readonly delaySeconds: number; readonly isFirst: boolean },
): WalkFit => {
  const startSeconds = leavesSeconds - opensSeconds;
  const slackSeconds = pass.on - startSeconds - walkSeconds;
  const delaySeconds = Math.max(Math.ceil(set.delaySeconds - slackSeconds - 1e-9), 0);
  const isLate = slackSeconds < 0 && metres >= limits.stepMetres && !set.isFirst;
  return {
    startSeconds,
    walkSeconds,
    slackSeconds,
    late: isLate ? 'warning' : null,
    delaySeconds,
  };
};
