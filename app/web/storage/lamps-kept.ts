import type { Database, KeptLamp } from './records.ts';

/** The lamps in the user's bag, the latest first. */
export const keptLamps = async (database: Database): Promise<KeptLamp[]> =>
  (await database.getAll('lamps')).sort((a, b) => b.keptAt - a.keptAt);

/** Puts a lamp into the bag, in place of the one with its id. */
export const putKeptLamp = async (database: Database, lamp: KeptLamp): Promise<void> => {
  await database.put('lamps', lamp);
};

export const deleteKeptLamp = (database: Database, id: string): Promise<void> => database.delete('lamps', id);
