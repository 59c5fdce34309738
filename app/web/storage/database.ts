import { openDB } from 'idb';
import type { Database, KeptStores } from './records.ts';

/** The store's name in the browser, and its version: one more for each change of its shape. */
export const databaseName = 'lampfall';
export const databaseVersion = 1;

interface Endings {
  /** A page of a newer build wants to change the store: this one has given way. */
  readonly onGaveWay: () => void;
  /** The browser closed the store by itself. */
  readonly onEnded: () => void;
}

/**
 * Opens the store, and makes what it lacks. Each version adds to the one before and takes nothing away.
 *
 * @throws what the browser throws
 */
export const openDatabase = ({ onGaveWay, onEnded }: Endings): Promise<Database> =>
  openDB<KeptStores>(databaseName, databaseVersion, {
    upgrade: (database, from) => {
      if (from < 1) {
        database.createObjectStore('setups');
        database.createObjectStore('summaries', { keyPath: 'key' });
        database.createObjectStore('scans');
        database.createObjectStore('lamps', { keyPath: 'id' });
      }
    },
    blocking: (_current, _wanted, event) => {
      (event.target as IDBDatabase).close();
      onGaveWay();
    },
    terminated: onEnded,
  });
