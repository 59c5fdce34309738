import { useEffect, useMemo, useState } from 'react';
import { judgeGuess } from '../../../core/readings/guess-reading.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useSetup } from '../state/app-store.ts';
import { useSession } from '../state/session.ts';
import { guessWords } from './guess-words.ts';
import { type Question, trueShadow } from './true-shadow.ts';

/** Where somebody points by mouse or keys: the cross on the plan. */
const pointerOnPlan = '.groundplan .pointer';

interface PredictProps {
  readonly question: Question;
  /** Scheme that it is about. */
  readonly schemeId: string;
  /** The answer is seen, or was not wanted. */
  readonly onDone: () => void;
}

/** Asks where the tip of a shadow falls; picture and shadows come when the user has pointed, or would rather not. */
export const Predict = ({ question, schemeId, onDone }: PredictProps) => {
  const setup = useSetup();
  const at = useSession((state) => state.pointing?.at ?? null);
  const isAsking = useSession((state) => state.hidesAnswer);
  const [answer, setAnswer] = useState<{ words: string; setup: Setup } | null>(null);
  const { set } = useSession.getState();
  const truth = useMemo(
    () => (isAsking ? trueShadow(setup, schemeId, question) : null),
    [isAsking, setup, schemeId, question],
  );
  const reveal = () => {
    if (!truth || !at) return;
    setAnswer({ words: guessWords(judgeGuess(at, truth.foot, truth.shadow), truth), setup });
    const { tip } = truth.shadow;
    // a shadow without end has no place that the plan could show
    set({ hidesAnswer: false, pointing: tip && { at, truth: tip } });
    onDone();
  };
  const skip = () => {
    set({ hidesAnswer: false, pointing: null });
    onDone();
  };
  // Enter on the cross is the same as the button
  useEffect(() => {
    if (!isAsking || !at) return;
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === 'Enter' && event.target instanceof Element && event.target.closest(pointerOnPlan)) reveal();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  });
  // an answer about a setup that has changed since is no answer
  const isStale = answer !== null && answer.setup !== setup;
  useEffect(() => {
    if (isStale) set({ pointing: null });
  }, [isStale, set]);
  if (!isAsking)
    return (
      <p className="lesson-answer" role="status">
        {answer && !isStale ? answer.words : ''}
      </p>
    );
  return (
    <div className="lesson-predict">
      {truth ? (
        <p>
          Point on the plan where the tip of the shadow of <strong>{truth.subjectName}</strong> falls.
        </p>
      ) : (
        <p>The setup has changed: the lamp or the subject that was asked for is gone.</p>
      )}
      <div className="choices">
        <button type="button" disabled={!truth || !at} onClick={reveal}>
          Reveal
        </button>
        <button type="button" onClick={() => document.querySelector<SVGElement>(pointerOnPlan)?.focus()}>
          To the plan
        </button>
        <button type="button" onClick={skip}>
          Skip
        </button>
      </div>
    </div>
  );
};
