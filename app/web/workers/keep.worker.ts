import { Connection } from '../storage/connection.ts';
import { problemOf } from '../storage/storage-problem.ts';
import { writeSetup } from '../storage/write-setup.ts';
import type { KeepAnswer, KeepRequest } from './keep-messages.ts';

const connection = new Connection();
// opened before the first write asks for it
connection.use(async () => undefined).catch(() => undefined);
const answer = (message: KeepAnswer) => postMessage(message);

// a page that is busy drawing would come late to each step of a transaction
self.onmessage = async ({ data: { id, write } }: MessageEvent<KeepRequest>) => {
  try {
    answer({ id, outcome: await connection.use((database) => writeSetup(database, write)) });
  } catch (error) {
    answer({ id, problem: problemOf(error).kind });
  }
};
