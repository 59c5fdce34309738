import { useApp } from '../state/app-store.ts';
import { renameSetup } from '../state/edits/setup-edits.ts';
import {
  BrokenSetup,
  bringBackOwn,
  clearOwn,
  deleteOwn,
  duplicateOwn,
  GoneSetup,
  readOwn,
  renameOwn,
} from '../state/kept-setups.ts';
import { pageSaving, useSaving } from '../state/page-saving.ts';
import { firstKept, lessons, samples } from '../state/samples.ts';
import type { LastOpened } from '../state/saving-state.ts';
import { listSetups } from '../storage/list-setups.ts';
import type { SetupSummary } from '../storage/records.ts';
import { problemOf } from '../storage/storage-problem.ts';
import { asSample, openNewest } from './open-newest.ts';
import { storageWords } from './saving-words.ts';

/** Does something to kept setups; what goes wrong is said, by `otherwise` where no reason is known, and nothing else happens. */
const attempt = async <T>(work: () => Promise<T>, otherwise?: string): Promise<T | null> => {
  try {
    return await work();
  } catch (error) {
    const problem = (text: string) => useApp.getState().tell({ tone: 'problem', text });
    if (error instanceof BrokenSetup)
      useSaving.getState().tell({ kind: 'broken', name: error.setupName, why: error.message, text: error.text });
    else if (error instanceof GoneSetup) problem('That setup is not there any more: another tab has deleted it.');
    else problem(otherwise ?? `${storageWords(problemOf(error).kind)} Nothing was changed.`);
    return null;
  }
};

const open = (key: string) => openNewest(() => readOwn(pageSaving, key));

/** Takes up a kept setup. */
export const openOwn = (key: string) => attempt(() => open(key));

/** Takes up what could not be when the page was opened. */
export const openAgain = (last: LastOpened) =>
  attempt(() => {
    if ('key' in last) return open(last.key);
    const kept = [...samples, ...lessons].find(({ id }) => id === last.sampleId) ?? firstKept;
    return openNewest(kept.load, asSample(kept.id));
  }, 'It could still not be opened. It is kept as it was.');

/** Gives it another name; on screen that is an edit. */
export const nameOwn = (key: string, name: string) => {
  if (key === useSaving.getState().key) useApp.getState().edit((setup) => renameSetup(setup, name));
  else void attempt(() => renameOwn(pageSaving, key, name));
};

export const copyOwn = (key: string) => attempt(() => duplicateOwn(pageSaving, key));

/** Deletes it at once; the notice brings it back. In place of the one on screen comes the next, or the first sample. */
export const removeOwn = ({ key, name }: Pick<SetupSummary, 'key' | 'name'>) =>
  attempt(async () => {
    const wasOpen = key === useSaving.getState().key;
    await deleteOwn(pageSaving, key);
    useSaving.getState().tell({ kind: 'deleted', key, name, wasOpen });
    if (!wasOpen) return;
    const [next] = await pageSaving.connection.use(listSetups);
    if (next) await open(next.key);
    else await openNewest(firstKept.load, asSample(firstKept.id));
  });

/** Takes a deletion back. */
export const undoRemove = ({ key, wasOpen }: { key: string; wasOpen: boolean }) =>
  attempt(async () => {
    if (!(await bringBackOwn(pageSaving, key))) throw new GoneSetup();
    if (wasOpen) await open(key);
  });

/** Makes room: what is deleted can't be brought back after this. */
export const clearRemoved = (key: string): void => {
  void clearOwn(pageSaving, key).catch(() => undefined);
};
