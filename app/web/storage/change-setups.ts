import type { IDBPTransaction } from 'idb';
import type { Database, KeptStores } from './records.ts';

const stores = ['setups', 'summaries', 'scans'] as const;
type Change = IDBPTransaction<KeptStores, ['setups', 'summaries', 'scans'], 'readwrite'>;

/**
 * Does something to kept setups, all or nothing; the answer comes when it is kept.
 *
 * @throws what the browser throws: of two errors the transaction's, which says why
 */
export const changeSetups = async <T>(database: Database, work: (change: Change) => Promise<T>): Promise<T> => {
  const change = database.transaction([...stores], 'readwrite') as unknown as Change;
  // heard below; without this it would also count as an error that nobody caught
  change.done.catch(() => undefined);
  try {
    const answer = await work(change);
    await change.done;
    return answer;
  } catch (error) {
    try {
      change.abort();
    } catch {
      // it has ended already
    }
    throw change.error ?? error;
  }
};

/** The keys of all scans of one setup. */
export const scansOf = (key: string): IDBKeyRange => IDBKeyRange.bound([key, ''], [key, '\uffff']);
