import type { Database, KeptLamp } from './records.ts';

const latestFirst = (lamps: readonly KeptLamp[]): KeptLamp[] => [...lamps].sort((a, b) => b.keptAt - a.keptAt);

/** The lamps in the user's bag, the latest first. */
export const keptLamps = async (database: Database): Promise<KeptLamp[]> => latestFirst(await database.getAll('lamps'));

/**
 * Changes the bag as it is in the store now, in one transaction: what another tab did meanwhile stays.
 *
 * @param change given the lamps that are there, those that are to be there; null = all stays
 * @returns the lamps that are there after it, the latest first
 */
export const changeKeptLamps = async (
  database: Database,
  change: (lamps: readonly KeptLamp[]) => readonly KeptLamp[] | null,
): Promise<KeptLamp[]> => {
  const transaction = database.transaction('lamps', 'readwrite');
  const { store } = transaction;
  const before = latestFirst(await store.getAll());
  const after = change(before) ?? before;
  const there = new Set(after.map(({ id }) => id));
  await Promise.all([
    ...before.filter(({ id }) => !there.has(id)).map(({ id }) => store.delete(id)),
    ...after.filter((lamp) => !before.includes(lamp)).map(async (lamp) => store.put(lamp)),
    transaction.done,
  ]);
  return latestFirst(after);
};
