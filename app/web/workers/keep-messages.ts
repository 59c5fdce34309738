import type { PreparedWrite } from '../storage/prepare-write.ts';
import type { StorageProblemKind } from '../storage/storage-problem.ts';
import type { WriteOutcome } from '../storage/write-setup.ts';

/** What the page asks of the worker that writes setups. */
export interface KeepRequest {
  readonly id: number;
  readonly write: PreparedWrite;
}

export type KeepAnswer =
  | { readonly id: number; readonly outcome: WriteOutcome }
  | { readonly id: number; readonly problem: StorageProblemKind };
