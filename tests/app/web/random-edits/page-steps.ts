import { movePass } from '../../../../app/web/state/edits/pass-edits.ts';
import type { Selection } from '../../../../app/web/state/session-pointers.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';
import type { Dice } from './dice.ts';
import type { Scene, Step, Steps } from './step.ts';

/** A drag of a lamp: many edits, one entry of history, kept or taken back. */
const drag =
  (end: (scene: Scene) => void): Step =>
  (scene, dice) => {
    const { app, framePlace, pass } = scene;
    if (!pass) return;
    app.getState().begin();
    for (let i = 0; i < 5; i++)
      app.getState().edit((s: Setup) => movePass(s, { ...framePlace, passId: pass.id }, dice.place()));
    end(scene);
  };

const anySelection = ({ setup, frame, pass }: Scene, dice: Dice): Selection => {
  const subject = dice.maybe(setup.subjects);
  const hazard = dice.maybe(setup.hazards);
  return dice.one<Selection>([
    ...(pass ? [{ kind: 'pass', frameId: frame.id, passId: pass.id } as const] : []),
    ...(subject ? [{ kind: 'subject', subjectId: subject.id } as const] : []),
    ...(hazard ? [{ kind: 'hazard', hazardId: hazard.id } as const] : []),
    { kind: 'camera' },
    { kind: 'hazards' },
    null,
  ]);
};

/** What is done with the page itself: drags, keys held down, selecting, choosing, stepping back and forth. */
export const pageSteps: Steps = {
  drag: drag(({ app }) => app.getState().commit()),
  dragTakenBack: drag(({ app }) => app.getState().cancel()),
  dragUndone: drag(({ app }) => app.getState().undo()),
  keyHeldDown: ({ app, framePlace, pass }, dice) => {
    if (!pass) return;
    for (let i = 0; i < 4; i++)
      app.getState().edit((s) => movePass(s, { ...framePlace, passId: pass.id }, dice.place()), 'move lamp');
  },
  undo: ({ app }) => app.getState().undo(),
  undoAndRedo: ({ app }, dice) => {
    const steps = dice.whole(1, 6);
    for (let i = 0; i < steps; i++) app.getState().undo();
    for (let i = 0; i < steps; i++) app.getState().redo();
  },
  select: (scene, dice) => scene.app.getState().select(anySelection(scene, dice)),
  chooseScheme: ({ app, setup }, dice) => app.getState().chooseScheme(dice.one(setup.schemes).id),
  chooseFrame: ({ app, scheme }, dice) => app.getState().chooseFrame(dice.one(scheme.frames).id),
  showBlend: ({ app }) => app.getState().showBlend(),
};
