import { create } from 'zustand';
import type { StorageProblemKind } from '../storage/storage-problem.ts';

/** What was open last: a sample or lesson without changes, or a setup of the user's own. */
export type LastOpened = { readonly sampleId: string } | { readonly key: string };

/** What is to be told of keeping setups; the library puts it into sentences. */
export type SavingNews =
  /** Changes can't be kept. */
  | { readonly kind: 'problem'; readonly problem: StorageProblemKind }
  /** Another tab changed it too: what is here is kept under another name. */
  | { readonly kind: 'second copy'; readonly name: string; readonly copyName: string }
  /** Another tab changed what is unchanged here. */
  | { readonly kind: 'changed elsewhere'; readonly key: string; readonly name: string }
  | { readonly kind: 'deleted elsewhere'; readonly key: string; readonly name: string }
  /** It was deleted, and a change here has brought it back. */
  | { readonly kind: 'brought back'; readonly name: string }
  | { readonly kind: 'deleted'; readonly key: string; readonly name: string; readonly wasOpen: boolean }
  /** What was open last could not be read when the page was opened; it may be another time. */
  | { readonly kind: 'not opened'; readonly last: LastOpened }
  /** What is kept can't be used. */
  | { readonly kind: 'broken'; readonly name: string; readonly why: string; readonly text: string };

export interface SavingState {
  /** What the setup on screen is kept under; null = it is not, as a sample without changes. */
  readonly key: string | null;
  /** The sample or lesson that the setup on screen is, or began as; null = none. */
  readonly sampleId: string | null;
  /** Why the last changes are not kept; null = they are. */
  readonly problem: StorageProblemKind | null;
  /** Grows whenever the list of kept setups may have changed. */
  readonly changes: number;
  /** The latest last. */
  readonly news: readonly SavingNews[];
  /** Tells something, in place of what was told of the same kind; each deletion is told by itself. */
  tell(news: SavingNews): void;
  take(news: SavingNews): void;
  takeKind(kind: SavingNews['kind']): void;
  changed(): void;
}

/** Nothing of it is saved or undone. */
export const createSavingState = () =>
  create<SavingState>((set) => ({
    key: null,
    sampleId: null,
    problem: null,
    changes: 0,
    news: [],
    tell: (told) =>
      set(({ news }) => ({ news: [...news.filter(({ kind }) => kind !== told.kind || kind === 'deleted'), told] })),
    take: (told) => set(({ news }) => ({ news: news.filter((each) => each !== told) })),
    takeKind: (gone) => set(({ news }) => ({ news: news.filter(({ kind }) => kind !== gone) })),
    changed: () => set(({ changes }) => ({ changes: changes + 1 })),
  }));
