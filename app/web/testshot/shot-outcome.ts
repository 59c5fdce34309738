import type { Frame, Lamp, TestShot } from '../../../core/setup/schema/setup.ts';
import type { LampFromShot } from '../../../core/testshot/lamp-from-shot.ts';
import { withTestShot } from '../state/edits/lamp-shots.ts';
import { type CountChange, countChanges } from './count-changes.ts';

/** What a shot would make of a lamp, and of its counts in the frame. */
export interface ShotOutcome {
  /** The shot as the lamp keeps it: against its box. */
  readonly verdict: TestShot;
  readonly after: Lamp;
  /** What the lamp would change by. */
  readonly movedStops: number;
  /** Whether that is less than the shot can tell. */
  readonly isWithinDoubt: boolean;
  /** Whether the shots before this one leave the lamp as it is taken for. */
  readonly stays: boolean;
  /** Counts that make up for what the lamp changes by; none where it stays, or may stay, as it is; null where the frame holds them not. */
  readonly counts: readonly CountChange[] | null;
}

/** Less than this is no change of a count, stops. */
const leastStops = 0.005;

/**
 * What a shot would make of a lamp. The lamp goes by the median of its shots, so its counts go by what that moves, not by what
 * this one shot says.
 */
export const shotOutcome = (lamp: Lamp, frame: Frame, found: LampFromShot, at: string | null): ShotOutcome => {
  const verdict = { at, stops: lamp.correctionStops + found.stops, uncertaintyStops: found.uncertaintyStops };
  const after = withTestShot(lamp, verdict);
  const movedStops = after.correctionStops - lamp.correctionStops;
  const isWithinDoubt = Math.abs(movedStops) < found.uncertaintyStops;
  const isLeast = Math.abs(movedStops) < leastStops;
  return {
    verdict,
    after,
    movedStops,
    isWithinDoubt,
    stays: isLeast && lamp.testShots.length > 0,
    counts: isWithinDoubt || isLeast ? [] : countChanges(frame, lamp.id, movedStops),
  };
};
