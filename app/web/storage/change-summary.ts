import { changeSetups, scansOf } from './change-setups.ts';
import type { Database, SetupSummary } from './records.ts';

type Part = Partial<Pick<SetupSummary, 'openedAt' | 'deletedAt' | 'thumbnail'>>;

/** Notes something of a kept setup beside its document; whether it is there. It keeps its revision. */
export const changeSummary = (database: Database, key: string, part: Part): Promise<boolean> =>
  changeSetups(database, async (change) => {
    const before = await change.objectStore('summaries').get(key);
    if (!before) return false;
    await change.objectStore('summaries').put({ ...before, ...part });
    return true;
  });

/** Clears away for good what was deleted before a time, or one such setup. What was brought back since stays. */
export const clearDeleted = (database: Database, which: { before: number } | { key: string }): Promise<void> =>
  changeSetups(database, async (change) => {
    const summaries = change.objectStore('summaries');
    const isMeant = ({ key, deletedAt }: SetupSummary) =>
      deletedAt !== null && ('key' in which ? key === which.key : deletedAt < which.before);
    for (const { key } of (await summaries.getAll()).filter(isMeant))
      await Promise.all([
        summaries.delete(key),
        change.objectStore('setups').delete(key),
        change.objectStore('scans').delete(scansOf(key)),
      ]);
  });

/** Empties the store of all setups and lamps. */
export const clearAll = async (database: Database): Promise<void> => {
  const tx = database.transaction(['setups', 'summaries', 'scans', 'lamps'], 'readwrite');
  await Promise.all([...[...tx.objectStoreNames].map((name) => tx.objectStore(name).clear()), tx.done]);
};
