import type { CountState } from '../../../core/card/count-cues.ts';
import type { ClockState } from '../../../core/card/frame-clock.ts';
import type { RunState } from './run-clock.ts';

const countWords: Readonly<Record<CountState['phase'], string>> = { 'lead-in': 'in', on: 'on', over: 'off' };

/** The big number, and what is to be read beside it. */
export const clockWords = (
  { phase, shown, rowNumber, lampSeconds, stroke }: ClockState,
  strokes: number,
): readonly [big: number, words: string] => {
  if (phase === 'delay') return [shown, 's to opening'];
  if (phase === 'closed') return [shown, 's · closed'];
  if (phase === 'on')
    return [lampSeconds, `lamp on${strokes > 1 ? ` · stroke ${stroke} of ${strokes}` : ''} · open ${shown} s`];
  return [shown, rowNumber === null ? 's open · no more lamp' : `s open · lamp in ${lampSeconds} s`];
};

/** What runs, as large as it can be. */
export const ClockLine = ({ state, strokes }: { state: RunState; strokes: number }) => {
  const [big, words] =
    state.kind === 'frame'
      ? clockWords(state.frame, strokes)
      : [
          state.count.shown,
          `${countWords[state.count.phase]}${strokes > 1 ? ` · stroke ${state.count.stroke} of ${strokes}` : ''}`,
        ];
  return (
    <>
      <b className="run-seconds">{big}</b> {words}
    </>
  );
};
