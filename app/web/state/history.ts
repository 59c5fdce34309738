/** Snapshots of a document with structural sharing. A gesture (a drag) counts as one entry. */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** The document as it was when the gesture under way began; null outside gestures. */
  readonly gestureStart: T | null;
}

/** Most steps that can be undone. */
const maxSteps = 200;

export const startHistory = <T>(present: T): History<T> => ({ past: [], present, future: [], gestureStart: null });

/**
 * A new document as one entry. Inside a gesture, or when it `continues` the step before (a key held down), it replaces
 * the present without an entry of its own.
 */
export const record = <T>(history: History<T>, next: T, continues = false): History<T> => {
  if (next === history.present) return history;
  if (history.gestureStart !== null) return { ...history, present: next };
  if (continues && history.past.length > 0 && history.future.length === 0) return { ...history, present: next };
  return {
    past: [...history.past.slice(-(maxSteps - 1)), history.present],
    present: next,
    future: [],
    gestureStart: null,
  };
};

/**
 * The same history with at most so many documents before the present one. Steps of one document share most of what they
 * are made of; another that was opened shares nothing, and with all that is worked out from it may take tens of megabytes.
 *
 * @param areApart whether a step and the one after it share nothing
 */
export const keepDocuments = <T>(
  history: History<T>,
  most: number,
  areApart: (before: T, after: T) => boolean,
): History<T> => {
  const { past, present } = history;
  let apart = 0;
  for (let i = past.length - 1; i >= 0; i--) {
    if (areApart(past[i] as T, past[i + 1] ?? present)) apart++;
    if (apart > most) return { ...history, past: past.slice(i + 1) };
  }
  return history;
};

/** The same history with every document changed alike. */
export const changeAll = <T>(
  { past, present, future, gestureStart }: History<T>,
  change: (one: T) => T,
): History<T> => ({
  past: past.map(change),
  present: change(present),
  future: future.map(change),
  gestureStart: gestureStart === null ? null : change(gestureStart),
});

export const beginGesture = <T>(history: History<T>): History<T> =>
  history.gestureStart === null ? { ...history, gestureStart: history.present } : history;

/** Ends a gesture: one entry if anything changed. */
export const commitGesture = <T>(history: History<T>): History<T> => {
  const { gestureStart, present } = history;
  if (gestureStart === null) return history;
  return record({ ...history, present: gestureStart, gestureStart: null }, present);
};

/** Ends a gesture and takes it back. */
export const cancelGesture = <T>(history: History<T>): History<T> =>
  history.gestureStart === null ? history : { ...history, present: history.gestureStart, gestureStart: null };

export const undo = <T>(history: History<T>): History<T> => {
  const settled = commitGesture(history);
  const before = settled.past.at(-1);
  if (before === undefined) return settled;
  return {
    past: settled.past.slice(0, -1),
    present: before,
    future: [settled.present, ...settled.future],
    gestureStart: null,
  };
};

export const redo = <T>(history: History<T>): History<T> => {
  const settled = commitGesture(history);
  const [next, ...future] = settled.future;
  if (next === undefined) return settled;
  return { past: [...settled.past, settled.present], present: next, future, gestureStart: null };
};
