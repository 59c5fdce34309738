import type { createAppStore } from '../../../../app/web/state/store.ts';
import type { Frame, Pass, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import type { Dice } from './dice.ts';

export type App = ReturnType<typeof createAppStore>;

/** What the page shows just now, which is what its controls act on. */
export interface Scene {
  readonly app: App;
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly frame: Frame;
  /** Some pass of that frame. */
  readonly pass: Pass | undefined;
  readonly framePlace: { readonly schemeId: string; readonly frameId: string };
}

/** One thing that a user does. */
export type Step = (scene: Scene, dice: Dice) => void;
export type Steps = Readonly<Record<string, Step>>;

export const sceneOf = (app: App, dice: Dice): Scene => {
  const { history, schemeId, frameId } = app.getState();
  const setup = history.present;
  const scheme = setup.schemes.find(({ id }) => id === schemeId) as Scheme;
  const frame = scheme.frames.find(({ id }) => id === frameId) as Frame;
  return { app, setup, scheme, frame, pass: dice.maybe(frame.passes), framePlace: { schemeId, frameId } };
};

/** A step that is one edit of the setup. */
export const edits =
  (change: (setup: Setup, scene: Scene, dice: Dice) => Setup): Step =>
  (scene, dice) =>
    scene.app.getState().edit((setup) => change(setup, scene, dice));

type PassChange = (
  setup: Setup,
  place: { schemeId: string; frameId: string; passId: string },
  dice: Dice,
  pass: Pass,
  scene: Scene,
) => Setup;

/** A step that is an edit of a pass of the frame that is shown. */
export const editsPass = (change: PassChange): Step =>
  edits((setup, scene, dice) =>
    scene.pass ? change(setup, { ...scene.framePlace, passId: scene.pass.id }, dice, scene.pass, scene) : setup,
  );
