import { Connection } from '../storage/connection.ts';
import type { PreparedWrite } from '../storage/prepare-write.ts';
import { problemOf } from '../storage/storage-problem.ts';
import { writeSetup } from '../storage/write-setup.ts';
import type { KeepAnswer, KeepRequest } from './keep-messages.ts';

const connection = new Connection();
// opened before the first write asks for it
connection.use(async () => undefined).catch(() => undefined);
/** What reads a setup is large and comes after the first picture. No write waits for it: what is kept late may be lost. */
let refuse: (write: PreparedWrite) => void = () => undefined;
setTimeout(() => {
  import('../storage/refuse-unreadable.ts').then(
    ({ refuseUnreadable }) => {
      refuse = refuseUnreadable;
    },
    () => undefined,
  );
}, 8000);
const answer = (message: KeepAnswer) => postMessage(message);

// a page that is busy drawing would come late to each step of a transaction
self.onmessage = async ({ data: { id, write } }: MessageEvent<KeepRequest>) => {
  try {
    refuse(write);
    answer({ id, outcome: await connection.use((database) => writeSetup(database, write)) });
  } catch (error) {
    answer({ id, problem: problemOf(error).kind });
  }
};
