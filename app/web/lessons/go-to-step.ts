import type { Lesson } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { useSession } from '../state/session.ts';

/** Chooses what a step shows: one scheme large, several side by side. What it asks for is hidden first. */
export const goToStep = ({ steps }: Lesson, index: number): void => {
  const step = steps[index];
  if (!step) return;
  const { history, chooseScheme, select } = useApp.getState();
  const schemes = history.present.schemes.filter(({ id }) => step.schemeIds.includes(id));
  const first = schemes.find(({ id }) => id === step.schemeIds[0]) ?? schemes[0];
  if (first) chooseScheme(first.id);
  const asked = step.predict;
  const frame = asked && first?.frames.find(({ passes }) => passes.some(({ id }) => id === asked.passId));
  if (asked && frame) select({ kind: 'pass', frameId: frame.id, passId: asked.passId });
  const { set } = useSession.getState();
  set({ lessonStep: index, pair: null, hidesAnswer: asked !== null, pointing: asked && { at: null, truth: null } });
  // a question is about one scheme; those beside it would give the answer away
  if (schemes.length > 1) set({ comparedIds: schemes.map(({ id }) => id), showsUnlit: false });
  set(schemes.length > 1 && !asked ? { room: 'compare' } : { room: 'viewfinder', isWide: false });
};

/** Closes the lesson; what it hid comes back. */
export const putAway = (): void => useSession.getState().set({ lessonStep: null, hidesAnswer: false, pointing: null });

/**
 * Follows a lesson that lost steps with a scheme, or has them again. A lesson that was put away stays so; what a question
 * hid comes back when it is asked no more.
 */
export const fitStep = (lesson: Lesson | null): void => {
  const { lessonStep, hidesAnswer } = useSession.getState();
  if (lessonStep === null) return;
  const last = (lesson?.steps.length ?? 0) - 1;
  if (!lesson) putAway();
  else if (lessonStep > last) goToStep(lesson, last);
  else if (hidesAnswer && !lesson.steps[lessonStep]?.predict)
    useSession.getState().set({ hidesAnswer: false, pointing: null });
};
