import type { Setup } from '../../../core/setup/schema/setup.ts';
import { lastOpened } from '../storage/list-setups.ts';
import { markedOpen } from '../storage/open-mark.ts';
import { within } from '../storage/within.ts';
import { BrokenSetup, GoneSetup, readOwn } from './kept-setups.ts';
import { lessons, samples } from './samples.ts';
import type { Saving } from './saving.ts';

/** How long the page waits for what was open last before it opens without it, in milliseconds. */
const mostMilliseconds = 1000;

/** A sample without changes as it was left, or a setup of the user's own; null where there is nothing to go on with. */
const findLast = async (saving: Saving): Promise<Setup | null> => {
  const mark = markedOpen();
  if (mark?.startsWith('sample/')) {
    const kept = [...samples, ...lessons].find(({ id }) => `sample/${id}` === mark);
    const setup = (await kept?.load()) ?? null;
    if (setup) saving.beginSample(setup, kept?.id ?? null);
    return setup;
  }
  if (mark === '') return null;
  if (mark !== null) {
    try {
      return await readOwn(saving, mark);
    } catch (error) {
      // deleted by another tab
      if (!(error instanceof GoneSetup)) throw error;
    }
  }
  const key = await saving.connection.use(lastOpened);
  return key === null ? null : readOwn(saving, key);
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
    if (error instanceof BrokenSetup)
      state.getState().tell({ kind: 'broken', name: error.setupName, why: error.message, text: error.text });
  };
  const opening = findLast(saving).then(takeUp, miss);
  await within(mostMilliseconds, opening).catch(() => undefined);
};
