import { useEffect, useRef, useState } from 'react';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { type RunStep, runSteps } from '../../../core/card/run-steps.ts';
import type { Verdict } from '../../../core/card/stop-rule-steps.ts';
import { goingOf, type Run } from '../../../core/card/tonight.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { dropLastRun } from '../state/edits/night-edits.ts';
import { say, soundsHere, soundWords } from './announce.ts';
import { FramePage } from './FramePage.tsx';
import { judgePass } from './judge-pass.ts';
import { nightUnderWay } from './local-now.ts';
import { RowPage } from './RowPage.tsx';
import { useCount } from './use-count.ts';
import { useExposed } from './use-exposed.ts';
import { useWakeLock } from './use-wake-lock.ts';

const verdicts: readonly (readonly [Verdict, string])[] = [
  ['too-bright', 'Too bright'],
  ['too-dark', 'Too dark'],
  ['flat', 'Flat'],
];

const isOf = ({ passId, frameId }: Run, step: RunStep | undefined): boolean =>
  step?.kind === 'pass' && passId === step.row.passId && frameId === step.row.frameId;

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
  const [at, setAt] = useState(() =>
    Math.max(
      0,
      steps.findIndex((step, i) => !isPast(step, i)),
    ),
  );
  const [said, setSaid] = useState('');
  const [sounds] = useState(soundsHere);
  const [sound, setSound] = useState(sounds[0] ?? 'silent');
  const heading = useRef<HTMLHeadingElement>(null);
  const [moves, setMoves] = useState(0);
  // the button that was pressed may be gone, or off; what is next is read out
  useEffect(() => {
    if (moves > 0) heading.current?.focus();
  }, [moves]);
  const step = steps[Math.min(at, steps.length - 1)];
  const row = step?.kind === 'pass' ? step.row : null;
  const going = row ? goingOf(card, row, night) : null;
  const count = useCount(going?.seconds ?? 0, row?.strokes ?? 1, sound);
  if (!step) return null;
  const isLast = at >= steps.length - 1;
  const goTo = (to: number, words = '') => {
    count.stop();
    setSaid(words);
    setAt(Math.max(0, Math.min(steps.length - 1, to)));
    setMoves(moves + 1);
  };
  const judge = (verdict: Verdict) => {
    if (!row || !going) return;
    const { isKept, words } = judgePass(card, row, scheme, going, verdict);
    say(words, sound);
    if (isKept && (verdict === 'good' || verdict === 'not-said'))
      return goTo(at + 1, verdict === 'good' && isLast ? `${words} That was the last.` : words);
    count.stop();
    setSaid(words);
  };
  const done = () => {
    if (step.kind === 'pass') return judge('good');
    exposed.add(step.frame.frameId);
    goTo(at + 1, isLast ? 'Done. That was the last.' : 'Done.');
  };
  /** A pass that was counted and not spoken of was gone all the same. */
  const goOn = () => (count.state?.phase === 'over' ? judge('not-said') : goTo(at + 1));
  const takeBack = () => {
    const last = night?.runs.at(-1);
    if (!night || !last) return;
    edit((s) => dropLastRun(s, night.id));
    const its = steps.findIndex((each) => isOf(last, each));
    goTo(its < 0 ? at : its, 'Taken back.');
  };
  const isCounting = count.state !== null && count.state.phase !== 'over';
  const next = sounds[(sounds.indexOf(sound) + 1) % sounds.length] ?? 'silent';
  return (
    <>
      {row && going && <RowPage card={card} row={row} going={going} count={count.state} heading={heading} />}
      {step.kind === 'frame' && <FramePage card={card} frame={step.frame} heading={heading} />}
      <p className="run-said" role="status">
        {said}
        {isDone(step) && !said && 'Done tonight.'}
      </p>
      <div className="run-buttons">
        {row && (
          <button
            type="button"
            className="strong run-wide"
            disabled={row.staysOn}
            onClick={isCounting ? count.stop : count.start}
          >
            {isCounting ? 'Stop' : 'Count'}
          </button>
        )}
        {row &&
          verdicts.map(([verdict, words]) => (
            <button key={verdict} type="button" onClick={() => judge(verdict)}>
              {words}
            </button>
          ))}
        <button type="button" className="run-wide" onClick={done}>
          Done
        </button>
        <button type="button" disabled={at === 0} onClick={() => goTo(at - 1)}>
          Back
        </button>
        <button type="button" disabled={!night?.runs.length} onClick={takeBack}>
          Undo
        </button>
        <button type="button" disabled={isLast} onClick={goOn}>
          Next
        </button>
        {row && sounds.length > 1 && (
          <button type="button" className="run-wide" onClick={() => setSound(next)}>
            {soundWords[sound]}
          </button>
        )}
      </div>
    </>
  );
};
