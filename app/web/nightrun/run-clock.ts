import { type CountState, type Cue, countCues, countState } from '../../../core/card/count-cues.ts';
import { type ClockState, clockCues, clockState, type FrameClock } from '../../../core/card/frame-clock.ts';

/** Time to take up the lamp after the tap. */
const leadInSeconds = 3;

/** What runs: the count of a pass alone, or a frame from the tap on. */
export type RunState =
  | { readonly kind: 'count'; readonly isOver: boolean; readonly count: CountState }
  | { readonly kind: 'frame'; readonly isOver: boolean; readonly frame: ClockState };

/** Something that goes by the clock from a tap on, in seconds. */
export interface RunClock {
  readonly cues: readonly Cue[];
  readonly stateAt: (seconds: number) => RunState;
}

export const countClock = (seconds: number, strokes: number): RunClock => {
  const plan = { leadInSeconds, seconds, strokes };
  return {
    cues: countCues(plan),
    stateAt: (elapsed) => {
      const count = countState(plan, elapsed);
      return { kind: 'count', isOver: count.phase === 'over', count };
    },
  };
};

export const shutterClock = (clock: FrameClock): RunClock => ({
  cues: clockCues(clock),
  stateAt: (elapsed) => {
    const frame = clockState(clock, elapsed);
    return { kind: 'frame', isOver: frame.phase === 'closed', frame };
  },
});
