import { create } from 'zustand';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { PassPlace } from '../../../core/sweep/pass-at.ts';
import { sweepCells } from '../../../core/sweep/sweep-cells.ts';
import { SweepError } from '../../../core/sweep/sweep-error.ts';
import type { SweepKind, SweepPlan } from '../../../core/sweep/sweep-plan.ts';
import type { CellReading } from '../workers/sweep-messages.ts';
import { useApp } from './app-store.ts';
import { documentKeyOf } from './document-key.ts';
import { type CellReader, readerInWorker } from './sweep-reader.ts';

/** A sweep that was started: the setup as it was then, and what is changed in it from cell to cell. */
export interface SweepRun {
  readonly setup: Setup;
  readonly place: PassPlace;
  readonly plan: SweepPlan;
  /** Whether all frames of the scheme are seen blended, or that of the pass alone. */
  readonly showsBlend: boolean;
  readonly cells: readonly SweepCell[];
}

/** How far the pictures of a sweep are. */
export interface PictureProgress {
  /** Every cell gets a first picture, then all of them are refined. */
  readonly stage: 'first' | 'refining' | 'done';
  /** Cells that have a picture, from the first on. */
  readonly shown: number;
  /** Of the stage, 0 to 1. */
  readonly share: number;
}

interface Sweeps {
  /** What is to be swept next. */
  readonly kind: SweepKind;
  /** Plans whose numbers were typed; the others follow the pass. */
  readonly plans: Readonly<Partial<Record<SweepKind, SweepPlan>>>;
  /** Why the last one could not be started. */
  readonly problem: SweepError | null;
  readonly run: SweepRun | null;
  readonly isCancelled: boolean;
  readonly pictures: PictureProgress;
  /** By cell id, as far as they have been worked out. */
  readonly readings: Readonly<Record<string, CellReading>>;
  readonly hasNoReadings: boolean;
  /** The cell that is seen large. */
  readonly openId: string | null;
  choose(kind: SweepKind): void;
  type(plan: SweepPlan): void;
  /** Puts a new sweep in place of the one before, or says why it can't. */
  start(setup: Setup, place: PassPlace, plan: SweepPlan, showsBlend: boolean): void;
  /** No further picture and no further number; what there is stays. */
  cancel(): void;
  tellPictures(pictures: PictureProgress): void;
  open(cellId: string | null): void;
  /** Forgets the sweep and what was typed. */
  clear(): void;
}

const nothing = {
  plans: {},
  problem: null,
  run: null,
  isCancelled: false,
  pictures: { stage: 'first', shown: 0, share: 0 },
  readings: {},
  hasNoReadings: false,
  openId: null,
} as const;

/** Whether pictures or numbers of the sweep are still to come. */
export const isSweeping = ({ run, isCancelled, pictures, readings, hasNoReadings }: Sweeps): boolean =>
  run !== null &&
  !isCancelled &&
  (pictures.stage !== 'done' || (!hasNoReadings && Object.keys(readings).length < run.cells.length));

/** A store of one sweep, whose numbers `read` works out, one cell at a time. */
export const createSweeps = (read: CellReader) =>
  create<Sweeps>((set, get) => {
    const isWanted = (run: SweepRun) => get().run === run && !get().isCancelled;
    const readAll = async (run: SweepRun) => {
      for (const cell of run.cells) {
        if (!isWanted(run)) return;
        try {
          const reading = await read(run.setup, run.place, cell);
          if (get().run === run) set(({ readings }) => ({ readings: { ...readings, [cell.id]: reading } }));
        } catch {
          if (get().run === run) set({ hasNoReadings: true });
          return;
        }
      }
    };
    return {
      kind: 'angles',
      ...nothing,
      choose: (kind) => set({ kind, problem: null }),
      type: (plan) => set(({ plans }) => ({ plans: { ...plans, [plan.kind]: plan }, problem: null })),
      start: (setup, place, plan, showsBlend) => {
        try {
          const run = { setup, place, plan, showsBlend, cells: sweepCells(setup, place, plan) };
          set(({ plans }) => ({ ...nothing, plans, run }));
          void readAll(run);
        } catch (error) {
          if (!(error instanceof SweepError)) throw error;
          set({ problem: error });
        }
      },
      cancel: () => set({ isCancelled: true }),
      tellPictures: (pictures) => set({ pictures }),
      open: (openId) => set({ openId }),
      clear: () => set(nothing),
    };
  });

/** The sweep of the page. */
export const useSweeps = createSweeps(readerInWorker());

// another document may use the same ids for its schemes and passes
useApp.subscribe((state, before) => {
  if (documentKeyOf(state) !== documentKeyOf(before)) useSweeps.getState().clear();
});
