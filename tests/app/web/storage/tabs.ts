import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { IDBFactory } from 'fake-indexeddb';
import { readOwn } from '../../../../app/web/state/kept-setups.ts';
import { Saving } from '../../../../app/web/state/saving.ts';
import { createSavingState } from '../../../../app/web/state/saving-state.ts';
import { directWriter } from '../../../../app/web/state/setup-writer.ts';
import { createAppStore } from '../../../../app/web/state/store.ts';
import { Connection } from '../../../../app/web/storage/connection.ts';
import { listSetups } from '../../../../app/web/storage/list-setups.ts';
import { type ReadSetup, readKeptSetup } from '../../../../app/web/storage/read-setup.ts';
import type { TabMessage } from '../../../../app/web/storage/tab-channel.ts';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';

const text = readFileSync('assets/setups/three-stones.json', 'utf8');
export const stones = (): Setup => parseSetup(text);

/** A browser without anything kept; all tabs opened after share it. */
export const freshBrowser = (): void => {
  globalThis.indexedDB = new IDBFactory();
  others.clear();
};

const others = new Set<(message: TabMessage) => void>();

/** A tab as the page makes it, without the page. */
export class Tab {
  readonly app = createAppStore(stones());
  readonly state = createSavingState();
  readonly connection = new Connection();
  readonly saving: Saving;

  constructor({ isStarted = true } = {}) {
    this.saving = new Saving({
      app: this.app,
      state: this.state,
      connection: this.connection,
      startWriter: () => directWriter(this.connection),
      sampleId: 'three-stones',
      openChannel: (hear) => {
        others.add(hear);
        return {
          tell: (message) => {
            for (const other of others) if (other !== hear) other(message);
          },
        };
      },
    });
    if (isStarted) this.saving.start();
  }

  get present(): Setup {
    return this.app.getState().history.present;
  }

  get key(): string | null {
    return this.state.getState().key;
  }

  get news(): string[] {
    return this.state.getState().news.map(({ kind }) => kind);
  }

  /** An edit that leaves a word in the setup's note. */
  write(word: string): void {
    this.app.getState().edit((setup) => ({ ...setup, note: `${setup.note} ${word}`.trim() }));
  }

  flush(): Promise<void> {
    return this.saving.autosave.flush();
  }

  async open(key: string): Promise<void> {
    this.app.getState().open(await readOwn(this.saving, key));
  }
}

/** All that is kept, read as a page that is opened now would read it. */
export const allKept = async (): Promise<ReadSetup[]> => {
  const connection = new Connection();
  const list = await connection.use(listSetups);
  const read = await Promise.all(list.map(({ key }) => connection.use((database) => readKeptSetup(database, key))));
  connection.close();
  return read.map((each) => {
    if (!each) throw new Error('a setup is listed and not kept');
    return each;
  });
};

/** The notes of all that is kept; fails where something can't be used. */
export const keptNotes = async (): Promise<string[]> =>
  (await allKept()).map((read) => {
    if ('why' in read) throw new Error(read.why);
    return read.setup.note;
  });

/** From now on the tabs hear nothing of each other. */
export const cutChannel = (): void => others.clear();
