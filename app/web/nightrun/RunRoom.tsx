import { useState } from 'react';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { Verdict } from '../../../core/card/stop-rule-steps.ts';
import { goingOf, runOf } from '../../../core/card/tonight.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { addRun, dropLastRun } from '../state/edits/night-edits.ts';
import { say, soundsHere, soundWords } from './announce.ts';
import { changeWords } from './change-words.ts';
import { localText, nightUnderWay } from './local-now.ts';
import { RowPage } from './RowPage.tsx';
import { useCount } from './use-count.ts';
import { useWakeLock } from './use-wake-lock.ts';

const verdicts: readonly (readonly [Verdict, string])[] = [
  ['too-bright', 'Too bright'],
  ['too-dark', 'Too dark'],
  ['flat', 'Flat'],
];

/** The passes of the night one after the other: count, say how it came out, go on. */
export const RunRoom = ({ card }: { card: FieldCard }) => {
  useWakeLock();
  const setup = useSetup();
  const scheme = useScheme();
  const { edit } = useApp.getState();
  const night = nightUnderWay(setup.nights, scheme.id, new Date());
  const isDone = (at: number) =>
    night?.runs.findLast(({ passId, frameId }) => {
      const row = card.rows[at];
      return passId === row?.passId && frameId === row.frameId;
    })?.verdict === 'good';
  const [at, setAt] = useState(() =>
    Math.max(
      0,
      card.rows.findIndex((_, i) => !isDone(i)),
    ),
  );
  const [said, setSaid] = useState('');
  const [sounds] = useState(soundsHere);
  const [sound, setSound] = useState(sounds[0] ?? 'silent');
  const row = card.rows[Math.min(at, card.rows.length - 1)];
  const going = row ? goingOf(card, row, night) : null;
  const count = useCount(going?.seconds ?? 0, row?.strokes ?? 1, sound);
  if (!row || !going) return <p className="quiet">This scheme has no passes yet: there is nothing to count.</p>;
  const goTo = (to: number) => {
    count.stop();
    setAt(Math.max(0, Math.min(card.rows.length - 1, to)));
  };
  const judge = (verdict: Verdict) => {
    const now = new Date();
    const run = runOf(card, row, going, verdict, localText(now));
    edit((s) => addRun(s, nightUnderWay(s.nights, scheme.id, now)?.id ?? null, scheme, run));
    const after = nightUnderWay(useApp.getState().history.present.nights, scheme.id, now);
    const words = changeWords(card, row, going, verdict, goingOf(card, row, after));
    const isLast = at === card.rows.length - 1;
    setSaid(verdict === 'good' && isLast ? `${words} That was the last pass.` : words);
    say(words, sound);
    goTo(verdict === 'good' || verdict === 'not-said' ? at + 1 : at);
  };
  /** A pass that was counted and not spoken of was gone all the same. */
  const goOn = () => (count.state?.phase === 'over' ? judge('not-said') : goTo(at + 1));
  const takeBack = () => {
    const last = night?.runs.at(-1);
    if (!night || !last) return;
    edit((s) => dropLastRun(s, night.id));
    goTo(card.rows.findIndex(({ passId, frameId }) => passId === last.passId && frameId === last.frameId));
    setSaid('Taken back.');
  };
  const isCounting = count.state !== null && count.state.phase !== 'over';
  const next = sounds[(sounds.indexOf(sound) + 1) % sounds.length] ?? 'silent';
  return (
    <>
      <RowPage card={card} row={row} going={going} count={count.state} />
      <p className="run-said" role="status">
        {said}
        {isDone(at) && !said && 'Done tonight.'}
      </p>
      <div className="run-buttons">
        <button
          type="button"
          className="strong run-wide"
          disabled={row.staysOn}
          onClick={isCounting ? count.stop : count.start}
        >
          {isCounting ? 'Stop' : 'Count'}
        </button>
        {verdicts.map(([verdict, words]) => (
          <button key={verdict} type="button" onClick={() => judge(verdict)}>
            {words}
          </button>
        ))}
        <button type="button" className="run-wide" onClick={() => judge('good')}>
          Done
        </button>
        <button type="button" disabled={at === 0} onClick={() => goTo(at - 1)}>
          Back
        </button>
        <button type="button" disabled={!night?.runs.length} onClick={takeBack}>
          Undo
        </button>
        <button type="button" disabled={at >= card.rows.length - 1} onClick={goOn}>
          Next
        </button>
        {sounds.length > 1 && (
          <button type="button" className="run-wide" onClick={() => setSound(next)}>
            {soundWords[sound]}
          </button>
        )}
      </div>
    </>
  );
};
