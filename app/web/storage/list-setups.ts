import type { Database, SetupSummary } from './records.ts';

/** What is told of all kept setups, the latest first. */
export const listSetups = async (database: Database): Promise<SetupSummary[]> => {
  const all = await database.getAll('summaries');
  return all.filter(({ deletedAt }) => deletedAt === null).sort((a, b) => b.changedAt - a.changedAt);
};

/** The key of the setup that was taken up or written last; null where there is none. */
export const lastOpened = async (database: Database): Promise<string | null> => {
  const all = await listSetups(database);
  return all.sort((a, b) => b.openedAt - a.openedAt)[0]?.key ?? null;
};
