import { create } from 'zustand';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { attemptEdit } from './edits/attempt-edit.ts';
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
import { firstPointers, type Selection, type SessionPointers, settledPointers } from './session-pointers.ts';

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
interface AppState extends SessionPointers {
  readonly history: History<Setup>;
  readonly showsBlend: boolean;
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

/** A document as it is taken up. */
const opening = (setup: Setup) => ({
  ...firstPointers(setup),
  showsBlend: (setup.schemes[0] as Scheme).frames.length > 1,
  notice: null,
  run: null,
});

/** A setup of the history, with the pointers set right. */
const settle = (state: SessionPointers & Pick<AppState, 'history'>, history: History<Setup>) => ({
  history,
  ...settledPointers(state, state.history.present, history.present),
});

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
        const next = attemptEdit(change, state.history.present);
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
        const isThere = state.history.present.schemes.some(({ id }) => id === schemeId);
        return isThere ? settle({ ...state, schemeId }, state.history) : {};
      }),
    chooseFrame: (frameId) => set({ frameId, showsBlend: false }),
    showBlend: () => set({ showsBlend: true }),
    tell: (notice) => set({ notice }),
    markSaved: () => set({ hasUnsaved: false }),
  }));
