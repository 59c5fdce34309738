/**
 * Why nothing can be kept: no room is left; the browser refuses; it does not answer; a newer page has changed the store;
 * what was to be kept could not be read back; something else broke.
 */
export type StorageProblemKind = 'full' | 'denied' | 'hangs' | 'newer' | 'unreadable' | 'broken';

/** The only error that leaves this folder, beside the faults of documents. */
export class StorageProblem extends Error {
  override readonly name = 'StorageProblem';
  readonly kind: StorageProblemKind;

  constructor(kind: StorageProblemKind, cause?: unknown) {
    super(`storage: ${kind}`, { cause });
    this.kind = kind;
  }
}

const kinds: Readonly<Record<string, StorageProblemKind>> = {
  QuotaExceededError: 'full',
  SecurityError: 'denied',
  NotAllowedError: 'denied',
  // no `indexedDB` at all, or null in its place
  ReferenceError: 'denied',
  TypeError: 'denied',
  VersionError: 'newer',
};

const nameOf = (error: unknown): string =>
  typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';

/** Names what a browser throws (Indexed Database API 3.0, section on exceptions; private windows differ). */
export const problemOf = (error: unknown): StorageProblem =>
  error instanceof StorageProblem ? error : new StorageProblem(kinds[nameOf(error)] ?? 'broken', error);

/** Whether a connection was closed under the work: it may be tried once more on a new one. */
export const isClosed = (error: unknown): boolean => nameOf(error) === 'InvalidStateError';
