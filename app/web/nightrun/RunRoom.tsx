import { useEffect, useRef, useState } from 'react';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { type ClockState, frameClock } from '../../../core/card/frame-clock.ts';
import { type RunStep, runSteps } from '../../../core/card/run-steps.ts';
import type { Verdict } from '../../../core/card/stop-rule-steps.ts';
import { goingOf } from '../../../core/card/tonight.ts';
import type { NightRun } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { dropLastRun } from '../state/edits/night-edits.ts';
import { say, soundsHere } from './announce.ts';
import { EndPage } from './EndPage.tsx';
import { FramePage } from './FramePage.tsx';
import { judgePass } from './judge-pass.ts';
import { nightUnderWay } from './night-under-way.ts';
import { RowPage } from './RowPage.tsx';
import { RunButtons } from './RunButtons.tsx';
import { countClock, shutterClock } from './run-clock.ts';
import { useCounting } from './use-counting.ts';
import { useExposed } from './use-exposed.ts';
import { useRunClock } from './use-run-clock.ts';
import { useWakeLock } from './use-wake-lock.ts';

const isOf = ({ passId, frameId }: NightRun, step: RunStep | undefined): boolean =>
  step?.kind === 'pass' && passId === step.row.passId && frameId === step.row.frameId;

const frameNumberOf = (step: RunStep | undefined): number | null =>
  step ? (step.kind === 'pass' ? step.row.frameNumber : step.frame.number) : null;

const clockRowOf = (
  { rows }: FieldCard,
  { phase, rowNumber }: ClockState,
  frameNumber: number | null,
): number | null =>
  phase === 'closed' ? (rows.find((row) => row.frameNumber === frameNumber)?.number ?? null) : rowNumber;

/** The passes and frames of the night one after the other: count, say how it came out, go on. */
export const RunRoom = ({ card }: { card: FieldCard }) => {
  useWakeLock();
  const setup = useSetup();
  const scheme = useScheme();
  const { edit } = useApp.getState();
  const exposed = useExposed(setup.id, scheme.id);
  const steps = runSteps(card);
  const night = nightUnderWay(setup.nights, scheme.id, new Date());
  const isDone = (step: RunStep | undefined) =>
    step?.kind === 'frame'
      ? exposed.has(step.frame.frameId)
      : night?.runs.findLast((run) => isOf(run, step))?.verdict === 'good';
  // a frame without a lamp is not in the log: it was exposed where something after it was done
  const isPast = (step: RunStep, i: number) =>
    isDone(step) || (step.kind === 'frame' && steps.slice(i + 1).some(isDone));
  // after the last step there is nothing left to note
  const [at, setAt] = useState(() => {
    const first = steps.findIndex((each, i) => !isPast(each, i));
    return first < 0 ? steps.length : first;
  });
  const [said, setSaid] = useState('');
  const [sound, setSound] = useState(soundsHere()[0] ?? 'silent');
  const heading = useRef<HTMLHeadingElement>(null);
  const [moves, setMoves] = useState(0);
  // the button that was pressed may be gone, or off; what is next is read out
  useEffect(() => {
    if (moves > 0) heading.current?.focus();
  }, [moves]);
  const step = steps[at];
  const row = step?.kind === 'pass' ? step.row : null;
  const going = row ? goingOf(card, row, night) : null;
  const { state, start, stop } = useRunClock(sound);
  const isRunning = state !== null && !state.isOver;
  useCounting(isRunning, stop);
  /** The row that the frame’s clock has come to: its next lamp; once it has closed, the first, to be judged. */
  const clockRow = state?.kind === 'frame' ? clockRowOf(card, state.frame, frameNumberOf(step)) : null;
  /** What is under way: the words of what was done before go once it begins. */
  const underWay = isRunning
    ? state.kind === 'frame'
      ? `${state.frame.phase} ${state.frame.rowNumber}`
      : state.count.phase
    : null;
  useEffect(() => {
    if (underWay) setSaid('');
  }, [underWay]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only as the clock comes to another lamp
  useEffect(() => {
    const its = steps.findIndex((each) => each.kind === 'pass' && each.row.number === clockRow);
    if (its >= 0) setAt(its);
  }, [clockRow]);
  const goTo = (to: number, words = '') => {
    const isOfSameFrame = frameNumberOf(steps[to]) === frameNumberOf(step);
    if (!(isRunning && state.kind === 'frame' && isOfSameFrame)) stop();
    setSaid(words);
    setAt(Math.max(0, Math.min(steps.length, to)));
    setMoves(moves + 1);
  };
  const judge = (verdict: Verdict) => {
    if (!row || !going) return;
    const { isKept, words } = judgePass(card, row, scheme, going, verdict);
    say(words, sound);
    if (isKept && (verdict === 'good' || verdict === 'not-said')) return goTo(at + 1, words);
    if (state?.kind === 'count') stop();
    setSaid(words);
  };
  const done = () => {
    if (step?.kind !== 'frame') return judge('good');
    exposed.add(step.frame.frameId);
    goTo(at + 1, 'Done.');
  };
  /** A pass that was counted and not spoken of was gone all the same. */
  const goOn = () => (row && state?.isOver ? judge('not-said') : goTo(at + 1));
  const takeBack = () => {
    const last = night?.runs.at(-1);
    if (!night || !last) return;
    edit((s) => dropLastRun(s, night.id));
    const its = steps.findIndex((each) => isOf(last, each));
    goTo(its < 0 ? at : its, 'Taken back.');
  };
  const frameNumber = frameNumberOf(step);
  return (
    <>
      {row && going && <RowPage card={card} row={row} going={going} state={state} heading={heading} />}
      {step?.kind === 'frame' && <FramePage card={card} frame={step.frame} state={state} heading={heading} />}
      {!step && <EndPage heading={heading} />}
      <p className="run-said" role="status">
        {said}
        {isDone(step) && !said && !isRunning && 'Done tonight.'}
      </p>
      <RunButtons
        isRunning={isRunning}
        onShutter={frameNumber === null ? null : () => start(shutterClock(frameClock(card, frameNumber, night)))}
        onCount={row && going && !row.staysOn ? () => start(countClock(going.seconds, row.strokes)) : null}
        onStop={stop}
        onJudge={row ? judge : null}
        onDone={step ? done : null}
        onBack={at > 0 ? () => goTo(at - 1) : null}
        onUndo={night?.runs.length ? takeBack : null}
        onNext={step ? goOn : null}
        sound={sound}
        onSound={setSound}
      />
    </>
  );
};
