import { create } from 'zustand';
import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { EditRefused } from './edits/edit-refused.ts';
import {
  beginGesture,
  cancelGesture,
  changeAll,
  commitGesture,
  type History,
  keepDocuments,
  record,
  redo,
  startHistory,
  undo,
} from './history.ts';

/** What is selected: a pass of the present scheme, a subject, a hazard, the camera, the ground, the place, or whoever walks. */
export type Selection =
  | { readonly kind: 'pass'; readonly frameId: string; readonly passId: string }
  | { readonly kind: 'subject'; readonly subjectId: string }
  | { readonly kind: 'camera' }
  | { readonly kind: 'ground' }
  | { readonly kind: 'place' }
  | { readonly kind: 'walking' }
  | { readonly kind: 'hazards' }
  | { readonly kind: 'hazard'; readonly hazardId: string }
  | null;

/** A word to the user: something went wrong, or went well. */
export interface Notice {
  readonly tone: 'problem' | 'done';
  readonly text: string;
  /** Takes back what was done, where the history of the setup does not. */
  readonly undo?: () => void;
}

/**
 * Which state lives how long:
 * | key | saved | exported | undoable |
 * | history.present (the setup) | by saving.ts | yes | yes |
 * | schemeId, frameId, showsBlend, selection, notice, openings, hasUnsaved, run, and all of session.ts | no | no | no |
 */
interface AppState {
  readonly history: History<Setup>;
  readonly schemeId: string;
  /** The frame shown and edited; "blend" is not a frame but shows all of them. */
  readonly frameId: string;
  readonly showsBlend: boolean;
  readonly selection: Selection;
  readonly notice: Notice | null;
  /** How many documents were taken up; one may be taken up again. */
  readonly openings: number;
  /** Whether anything was changed since it was last kept, or saved as a file. */
  readonly hasUnsaved: boolean;
  /** The run of edits that the last one belongs to. */
  readonly run: { readonly name: string; readonly at: number } | null;

  /** Takes up another document. The one before is a step back in the history. */
  open(setup: Setup): void;
  /** Takes up a document as the first: there is no step back. */
  startOn(setup: Setup): void;
  /**
   * One edit: an entry of its own, or part of the gesture under way. Edits with the same `run` that follow each other
   * within a second (a key held down) are one entry. One that throws `EditRefused` changes nothing; the user is told why.
   */
  edit(change: (setup: Setup) => Setup, run?: string): void;
  /** Changes every step of the history alike: what was changed elsewhere holds whichever way one steps. */
  rewrite(change: (setup: Setup) => Setup): void;
  begin(): void;
  commit(): void;
  cancel(): void;
  undo(): void;
  redo(): void;
  select(selection: Selection): void;
  chooseScheme(schemeId: string): void;
  chooseFrame(frameId: string): void;
  showBlend(): void;
  tell(notice: Notice | null): void;
  markSaved(): void;
}

/** How long after the one before an edit still belongs to the same run. */
const runMilliseconds = 1000;

/** The frame that a scheme opens on: its last painted one. */
const mainFrame = (scheme: Scheme): Frame =>
  scheme.frames.findLast(({ purpose }) => purpose === 'painted') ?? (scheme.frames.at(-1) as Frame);

const firstPass = (frame: Frame): Selection => {
  const pass = frame.passes[0];
  return pass ? { kind: 'pass', frameId: frame.id, passId: pass.id } : null;
};

const opening = (setup: Setup) => {
  const scheme = setup.schemes[0] as Scheme;
  const frame = mainFrame(scheme);
  return {
    schemeId: scheme.id,
    frameId: frame.id,
    showsBlend: scheme.frames.length > 1,
    selection: firstPass(frame),
    notice: null,
    run: null,
  };
};

/** Makes an edit, or says why it can't be made. */
const attempt = (
  change: (setup: Setup) => Setup,
  setup: Setup,
): { readonly setup: Setup } | { readonly refused: string } => {
  try {
    return { setup: change(setup) };
  } catch (error) {
    if (error instanceof EditRefused) return { refused: error.message };
    throw error;
  }
};

/**
 * Session pointers that lead nowhere after a step of history are set right. In place of a scheme that is gone comes the one
 * before it: what it was made of, as a rule.
 */
const settle = (state: Pick<AppState, 'history' | 'schemeId' | 'frameId' | 'selection'>, history: History<Setup>) => {
  const { schemes, subjects, hazards } = history.present;
  const before = state.history.present.schemes.findIndex(({ id }) => id === state.schemeId) - 1;
  const scheme =
    schemes.find(({ id }) => id === state.schemeId) ?? schemes[Math.max(before, 0)] ?? (schemes[0] as Scheme);
  const frame = scheme.frames.find(({ id }) => id === state.frameId) ?? mainFrame(scheme);
  let { selection } = state;
  if (selection?.kind === 'pass') {
    const { frameId, passId } = selection;
    const there = scheme.frames.find(({ id }) => id === frameId)?.passes.some(({ id }) => id === passId);
    if (!there) selection = firstPass(frame);
  } else if (selection?.kind === 'subject') {
    const { subjectId } = selection;
    if (!subjects.some(({ id }) => id === subjectId)) selection = null;
  } else if (selection?.kind === 'hazard') {
    const { hazardId } = selection;
    if (!hazards.some(({ id }) => id === hazardId)) selection = { kind: 'hazards' };
  }
  return { history, schemeId: scheme.id, frameId: frame.id, selection };
};

/** A step back or forth in the history. */
const step = (state: Parameters<typeof settle>[0] & Pick<AppState, 'hasUnsaved'>, history: History<Setup>) => ({
  ...settle(state, history),
  hasUnsaved: state.hasUnsaved || history.present !== state.history.present,
  run: null,
  notice: null,
});

/** Setups that were open before and can be stepped back to. */
const documentsBefore = 3;

const sharesNothing = (before: Setup, after: Setup): boolean =>
  (['ground', 'subjects', 'camera', 'lamps', 'schemes'] as const).every((part) => before[part] !== after[part]);

/** The app's store, started on a setup. */
export const createAppStore = (setup: Setup) =>
  create<AppState>((set) => ({
    ...opening(setup),
    history: startHistory(setup),
    openings: 0,
    hasUnsaved: false,
    open: (next) =>
      set(({ history, openings }) => ({
        ...opening(next),
        openings: openings + 1,
        history: keepDocuments(record(commitGesture(history), next), documentsBefore, sharesNothing),
      })),
    startOn: (first) =>
      set(({ openings }) => ({
        ...opening(first),
        openings: openings + 1,
        history: startHistory(first),
        hasUnsaved: false,
      })),
    edit: (change, run) =>
      set((state) => {
        const now = Date.now();
        const continues = run !== undefined && run === state.run?.name && now - state.run.at < runMilliseconds;
        const next = attempt(change, state.history.present);
        if ('refused' in next) return { notice: { tone: 'problem', text: next.refused } };
        const history = record(state.history, next.setup, continues);
        const isChanged = history !== state.history;
        return {
          ...settle(state, history),
          hasUnsaved: state.hasUnsaved || isChanged,
          // what could not be done was about what was there before
          notice: isChanged && state.notice?.tone === 'problem' ? null : state.notice,
          run: run === undefined ? null : { name: run, at: now },
        };
      }),
    rewrite: (change) => set(({ history }) => ({ history: changeAll(history, change) })),
    begin: () => set(({ history }) => ({ history: beginGesture(history) })),
    commit: () => set(({ history }) => ({ history: commitGesture(history) })),
    cancel: () => set((state) => settle(state, cancelGesture(state.history))),
    undo: () => set((state) => step(state, undo(state.history))),
    redo: () => set((state) => step(state, redo(state.history))),
    select: (selection) => set({ selection }),
    chooseScheme: (schemeId) =>
      set((state) => {
        const scheme = state.history.present.schemes.find(({ id }) => id === schemeId);
        if (!scheme) return {};
        const frame = scheme.frames.find(({ id }) => id === state.frameId) ?? mainFrame(scheme);
        return settle({ ...state, schemeId, frameId: frame.id }, state.history);
      }),
    chooseFrame: (frameId) => set({ frameId, showsBlend: false }),
    showBlend: () => set({ showsBlend: true }),
    tell: (notice) => set({ notice }),
    markSaved: () => set({ hasUnsaved: false }),
  }));
