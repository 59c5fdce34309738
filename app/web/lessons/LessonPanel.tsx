import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from 'react';
import { useApp, useSetup } from '../state/app-store.ts';
import { useSession } from '../state/session.ts';
import { worded } from '../ui/lengths.ts';
import { fitStep, goToStep, putAway } from './go-to-step.ts';
import { Predict } from './Predict.tsx';

/** The lesson of the present setup, step by step. */
export const LessonPanel = () => {
  const { id, name, lesson } = useSetup();
  const openings = useApp((state) => state.openings);
  const at = useSession((state) => state.lessonStep);
  const section = useRef<HTMLElement>(null);
  // whichever way a document was opened, its lesson begins at its first step; leaving it shows what it hid
  // biome-ignore lint/correctness/useExhaustiveDependencies: a lesson that changes with its document's schemes goes on
  useLayoutEffect(() => {
    if (lesson) goToStep(lesson, 0);
    return putAway;
  }, [id, openings]);
  useLayoutEffect(() => fitStep(lesson), [lesson]);
  const isOpen = lesson !== null && at !== null;
  useEffect(() => {
    if (isOpen) section.current?.focus({ preventScroll: true });
  }, [isOpen]);
  if (!lesson) return null;
  if (at === null)
    return (
      <button type="button" className="lesson-away" onClick={() => goToStep(lesson, 0)}>
        Lesson: {name}
      </button>
    );
  const count = lesson.steps.length;
  const step = lesson.steps[Math.min(at, count - 1)];
  if (!step) return null;
  const go = (by: 1 | -1) => {
    if (at + by < 0 || at + by >= count) return;
    goToStep(lesson, at + by);
    // a button at the end of its way can't keep the keys
    section.current?.focus({ preventScroll: true });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : null;
    if (!by || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    go(by);
  };
  const onDone = () => {
    section.current?.focus({ preventScroll: true });
    if (step.schemeIds.length > 1) useSession.getState().set({ room: 'compare' });
  };
  return (
    <section ref={section} className="lesson" aria-label={`Lesson: ${name}`} tabIndex={-1} onKeyDown={onKeyDown}>
      <header>
        <h2>Lesson: {name}</h2>
        <div className="choices lesson-steps">
          <button type="button" className="small" disabled={at === 0} onClick={() => go(-1)}>
            Back
          </button>
          <span>
            Step {at + 1} of {count}
          </span>
          <button type="button" className="small" disabled={at === count - 1} onClick={() => go(1)}>
            Next
          </button>
        </div>
        <span className="quiet lesson-keys">← → go through the steps</span>
        <button type="button" className="small lesson-close" onClick={putAway}>
          Put away
        </button>
      </header>
      <div aria-live="polite">
        <h3>{worded(step.title)}</h3>
        <p>{worded(step.text)}</p>
      </div>
      {step.predict && <Predict key={at} question={step.predict} schemeId={step.schemeIds[0] ?? ''} onDone={onDone} />}
    </section>
  );
};
