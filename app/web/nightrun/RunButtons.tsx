import { useEffect, useRef, useState } from 'react';
import type { Verdict } from '../../../core/card/stop-rule-steps.ts';
import { type Sound, soundsHere, soundWords } from './announce.ts';
import { Taps } from './one-tap.ts';

const verdicts: readonly (readonly [Verdict, string])[] = [
  ['too-bright', 'Too bright'],
  ['too-dark', 'Too dark'],
  ['flat', 'Flat'],
];

interface RunButtonsProps {
  readonly isRunning: boolean;
  /** null where there is nothing to do so with. */
  readonly onShutter: (() => void) | null;
  readonly onCount: (() => void) | null;
  readonly onStop: () => void;
  readonly onJudge: ((verdict: Verdict) => void) | null;
  readonly onDone: (() => void) | null;
  readonly onBack: (() => void) | null;
  readonly onUndo: (() => void) | null;
  readonly onNext: (() => void) | null;
  readonly sound: Sound;
  readonly onSound: (sound: Sound) => void;
}

/** All that is tapped in the field. What is needed most comes first. */
export const RunButtons = ({ isRunning, sound, ...on }: RunButtonsProps) => {
  const [taps] = useState(() => new Taps());
  const [sounds] = useState(soundsHere);
  const all = useRef<HTMLDivElement>(null);
  useEffect(() => all.current?.querySelector<HTMLButtonElement>('button:not(:disabled)')?.focus(), []);
  const once = (name: string, act: (() => void) | null) => ({
    disabled: act === null,
    onClick: () => {
      if (taps.isNew(name, performance.now())) act?.();
    },
  });
  return (
    <div className="run-buttons" ref={all}>
      {isRunning && (
        <button type="button" className="strong run-wide" {...once('clock', on.onStop)}>
          Stop
        </button>
      )}
      {!isRunning && on.onShutter && (
        <button
          type="button"
          className={`strong ${on.onJudge ? 'run-broad' : 'run-wide'}`}
          {...once('clock', on.onShutter)}
        >
          Shutter
        </button>
      )}
      {!isRunning && on.onJudge && (
        <button type="button" {...once('clock', on.onCount)}>
          Count
        </button>
      )}
      {on.onDone && (
        <button type="button" className="run-wide" {...once('done', on.onDone)}>
          Done
        </button>
      )}
      {on.onJudge &&
        verdicts.map(([verdict, words]) => (
          <button key={verdict} type="button" {...once(verdict, () => on.onJudge?.(verdict))}>
            {words}
          </button>
        ))}
      <button type="button" {...once('back', on.onBack)}>
        Back
      </button>
      <button type="button" {...once('undo', on.onUndo)}>
        Undo
      </button>
      <button type="button" {...once('next', on.onNext)}>
        Next
      </button>
      {sounds.length > 1 && (
        <fieldset className="run-wide run-sounds" aria-label="How the count is told">
          {sounds.map((each) => (
            <button key={each} type="button" aria-pressed={each === sound} {...once(each, () => on.onSound(each))}>
              {soundWords[each]}
            </button>
          ))}
        </fieldset>
      )}
    </div>
  );
};
