import type { Setup } from '../../../core/setup/schema/setup.ts';
import { changeSummary, clearDeleted } from '../storage/change-summary.ts';
import { listSetups } from '../storage/list-setups.ts';
import { newKey } from '../storage/new-key.ts';
import { prepareWrite } from '../storage/prepare-write.ts';
import { readKeptSetup } from '../storage/read-setup.ts';
import type { SetupSummary } from '../storage/records.ts';
import { ScanKeys } from '../storage/scan-keys.ts';
import { writeSetup } from '../storage/write-setup.ts';
import { freshName } from './edits/plain-name.ts';
import { renameSetup } from './edits/setup-edits.ts';
import type { Saving } from './saving.ts';

/** A kept setup can't be used. `text` is what is kept. */
export class BrokenSetup extends Error {
  override readonly name = 'BrokenSetup';
  readonly setupName: string;
  readonly text: string;

  constructor(why: string, setupName: string, text: string) {
    super(why);
    this.setupName = setupName;
    this.text = text;
  }
}
/** There is no such setup any more. */
export class GoneSetup extends Error {
  override readonly name = 'GoneSetup';
}

const read = async ({ connection }: Saving, key: string) => {
  const found = await connection.use((database) => readKeptSetup(database, key));
  if (!found) throw new GoneSetup();
  if ('why' in found) throw new BrokenSetup(found.why, found.summary.name, found.text);
  return found;
};

/**
 * Reads a kept setup, to be taken up.
 *
 * @throws BrokenSetup, GoneSetup, StorageProblem
 */
export const readOwn = async (saving: Saving, key: string): Promise<Setup> => {
  const { setup, summary, scanKeys } = await saving.readSettled(() => read(saving, key));
  saving.documents.beginRead(setup, { key, revisions: [summary.revision], scanKeys, sampleId: summary.sampleId });
  saving.connection.use((database) => changeSummary(database, key, { openedAt: Date.now() })).catch(() => undefined);
  return setup;
};

const write = async (saving: Saving, key: string, setup: Setup, from: SetupSummary, scanKeys: ScanKeys) => {
  const follows = key === from.key ? [from.revision] : [];
  const { sampleId, thumbnail } = from;
  const revision = newKey();
  const what = { key, setup, scanKeys, follows, revision, sampleId, thumbnail, changedAt: Date.now() };
  const outcome = await saving.connection.use((database) => writeSetup(database, prepareWrite(what)));
  saving.tellTabs({ kind: 'kept', key });
  return { outcome, revision };
};

/** Gives a kept setup that is not on screen another name; tried again where another tab writes just then. */
export const renameOwn = async (saving: Saving, key: string, name: string): Promise<void> => {
  await saving.autosave.flush();
  for (;;) {
    const { setup, summary, scanKeys } = await read(saving, key);
    const { outcome, revision } = await write(saving, key, renameSetup(setup, name), summary, scanKeys);
    if (outcome === 'overtaken') continue;
    return saving.tookName(key, summary.revision, revision, name);
  }
};

/** Keeps a copy beside a kept setup, under a name of its own. */
export const duplicateOwn = async (saving: Saving, key: string): Promise<string> => {
  await saving.autosave.flush();
  const { setup, summary } = await read(saving, key);
  const names = (await saving.connection.use(listSetups)).map(({ name }) => name);
  const copy = newKey();
  await write(saving, copy, renameSetup(setup, freshName(names, setup.name)), summary, new ScanKeys());
  return copy;
};

/** Deletes a kept setup; it can be brought back until it is cleared away. */
export const deleteOwn = async (saving: Saving, key: string): Promise<void> => {
  await saving.autosave.flush();
  await saving.connection.use((database) => changeSummary(database, key, { deletedAt: Date.now() }));
  saving.documents.forget(key);
  saving.tellTabs({ kind: 'deleted', key });
};

/** Brings a deleted setup back; whether it was still there. */
export const bringBackOwn = async (saving: Saving, key: string): Promise<boolean> => {
  const isThere = await saving.connection.use((database) => changeSummary(database, key, { deletedAt: null }));
  saving.tellTabs({ kind: 'back', key });
  return isThere;
};

/** Clears a deleted setup away for good, to make room. */
export const clearOwn = (saving: Saving, key: string): Promise<void> =>
  saving.connection.use((database) => clearDeleted(database, { key }));
