import type { Setup } from '../../../core/setup/schema/setup.ts';
import { lastOpened } from '../storage/list-setups.ts';
import { markedOpen } from '../storage/open-mark.ts';
import { problemOf } from '../storage/storage-problem.ts';
import { within } from '../storage/within.ts';
import { BrokenSetup, GoneSetup, readOwn } from './kept-setups.ts';
import { lessons, samples } from './samples.ts';
import type { Saving } from './saving.ts';
import type { LastOpened } from './saving-state.ts';

/** How long the page waits for what was open last before it opens without it, in milliseconds. */
const mostMilliseconds = 1000;

/**
 * A sample without changes as it was left, or a setup of the user's own; null where there is nothing to go on with. `onFound`
 * is told which before it is read.
 */
const findLast = async (saving: Saving, onFound: (last: LastOpened | null) => void): Promise<Setup | null> => {
  const mark = markedOpen();
  if (mark?.startsWith('sample/')) {
    const kept = [...samples, ...lessons].find(({ id }) => `sample/${id}` === mark);
    if (kept) onFound({ sampleId: kept.id });
    const setup = (await kept?.load()) ?? null;
    if (setup) saving.documents.beginSample(setup, kept?.id ?? null);
    return setup;
  }
  if (mark === '') return null;
  if (mark !== null) {
    onFound({ key: mark });
    try {
      return await readOwn(saving, mark);
    } catch (error) {
      // deleted by another tab
      if (!(error instanceof GoneSetup)) throw error;
    }
    onFound(null);
  }
  const key = await saving.connection.use(lastOpened);
  if (key === null) return null;
  onFound({ key });
  return readOwn(saving, key);
};

/**
 * Opens what was open last, before anything is drawn. When that takes long the page opens without it, and takes it up when it
 * comes, unless something was begun meanwhile. Never fails.
 */
export const openLast = async (saving: Saving): Promise<void> => {
  const { app, state } = saving;
  const { openings, history } = app.getState();
  const takeUp = (setup: Setup | null) => {
    const now = app.getState();
    if (setup && now.openings === openings && now.history === history) now.startOn(setup);
  };
  const miss = (error: unknown) => {
    const { tell } = state.getState();
    if (error instanceof BrokenSetup)
      tell({ kind: 'broken', name: error.setupName, why: error.message, text: error.text });
    else if (found && problemOf(error).kind !== 'denied') tell({ kind: 'not opened', last: found });
  };
  let found: LastOpened | null = null;
  const onFound = (last: LastOpened | null) => {
    found = last;
  };
  const opening = findLast(saving, onFound).then(takeUp, miss);
  await within(mostMilliseconds, opening).catch(() => undefined);
};
