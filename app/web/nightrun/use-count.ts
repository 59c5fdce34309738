import { useEffect, useMemo, useState } from 'react';
import { type CountState, countCues, countState, dueCue } from '../../../core/card/count-cues.ts';
import { announce, type Sound } from './announce.ts';

/** Time to take up the lamp after the tap. */
export const leadInSeconds = 3;
/** How often the clock is looked at, in milliseconds. */
const lookMilliseconds = 50;

interface Count {
  /** null when nothing is counted. */
  readonly state: CountState | null;
  readonly start: () => void;
  readonly stop: () => void;
}

/** Counts a pass by the clock: a page that slept goes on where the clock is, and says nothing that is past. */
export const useCount = (seconds: number, strokes: number, sound: Sound): Count => {
  const plan = useMemo(() => ({ leadInSeconds, seconds, strokes }), [seconds, strokes]);
  const [startedAt, setStartedAt] = useState<number | null>(null);
  const [state, setState] = useState<CountState | null>(null);
  useEffect(() => {
    if (startedAt === null) return;
    const cues = countCues(plan);
    let before = -1;
    const look = () => {
      const now = (Date.now() - startedAt) / 1000;
      const cue = dueCue(cues, before, now);
      before = now;
      if (cue) announce(cue, sound);
      const next = countState(plan, now);
      setState((old) =>
        old?.phase === next.phase && old.shown === next.shown && old.stroke === next.stroke ? old : next,
      );
      if (next.phase === 'over') clearInterval(timer);
    };
    const timer = setInterval(look, lookMilliseconds);
    look();
    return () => clearInterval(timer);
  }, [startedAt, plan, sound]);
  return {
    state,
    start: () => setStartedAt(Date.now()),
    stop: () => {
      setStartedAt(null);
      setState(null);
    },
  };
};
