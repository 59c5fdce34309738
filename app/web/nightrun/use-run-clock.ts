import { useEffect, useState } from 'react';
import { dueCue } from '../../../core/card/count-cues.ts';
import { announce, type Sound } from './announce.ts';
import type { RunClock, RunState } from './run-clock.ts';

/** How often the clock is looked at, in milliseconds. */
const lookMilliseconds = 50;

interface Running {
  /** null when nothing runs. */
  readonly state: RunState | null;
  readonly start: (clock: RunClock) => void;
  readonly stop: () => void;
}

/** Runs by the clock: a page that slept goes on where the clock is, and says nothing that is past. */
export const useRunClock = (sound: Sound): Running => {
  const [running, setRunning] = useState<{ readonly clock: RunClock; readonly startedAt: number } | null>(null);
  const [state, setState] = useState<RunState | null>(null);
  useEffect(() => {
    if (!running) return;
    const { clock, startedAt } = running;
    let before = -1;
    const look = () => {
      const now = (Date.now() - startedAt) / 1000;
      const cue = dueCue(clock.cues, before, now);
      before = now;
      if (cue) announce(cue, sound);
      const next = clock.stateAt(now);
      setState((old) => (JSON.stringify(old) === JSON.stringify(next) ? old : next));
      if (next.isOver) clearInterval(timer);
    };
    const timer = setInterval(look, lookMilliseconds);
    look();
    return () => clearInterval(timer);
  }, [running, sound]);
  return {
    state,
    start: (clock) => setRunning({ clock, startedAt: Date.now() }),
    stop: () => {
      setRunning(null);
      setState(null);
    },
  };
};
