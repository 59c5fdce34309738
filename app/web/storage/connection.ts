import { openDatabase } from './database.ts';
import type { Database } from './records.ts';
import { isClosed, problemOf, StorageProblem } from './storage-problem.ts';
import { within } from './within.ts';

/** How long opening, and one piece of work, may take before they count as hanging, in milliseconds. */
const openMilliseconds = 5000;
const workMilliseconds = 20_000;

/** The page's way to the store: opened when first used, and again when it was closed. */
export class Connection {
  private opening: Promise<Database> | null = null;
  private hasGivenWay = false;

  private open(): Promise<Database> {
    if (this.opening) return this.opening;
    const forget = () => {
      if (this.opening === opening) this.opening = null;
    };
    // async: a browser without a store throws at once
    const asked = (async () =>
      openDatabase({
        onGaveWay: () => {
          this.hasGivenWay = true;
          forget();
        },
        onEnded: forget,
      }))();
    const opening = within(openMilliseconds, asked).catch((error) => {
      forget();
      // one that comes late after all is not left to stand in others' way
      void asked.then((database) => database.close()).catch(() => undefined);
      throw error;
    });
    this.opening = opening;
    return opening;
  }

  /**
   * Does something with the store.
   *
   * @throws StorageProblem, and what the work throws of its own that is no fault of the store
   */
  async use<T>(work: (database: Database) => Promise<T>): Promise<T> {
    if (this.hasGivenWay) throw new StorageProblem('newer');
    try {
      return await this.tryUse(work);
    } catch (error) {
      if (!isClosed(error)) throw problemOf(error);
      this.opening = null;
    }
    return this.tryUse(work).catch((error) => Promise.reject(problemOf(error)));
  }

  private async tryUse<T>(work: (database: Database) => Promise<T>): Promise<T> {
    const database = await this.open();
    try {
      return await within(workMilliseconds, work(database));
    } catch (error) {
      if (error instanceof StorageProblem && error.kind === 'hangs') this.close();
      throw error;
    }
  }

  /** Lets go of the store; the next use opens it again. */
  close(): void {
    void this.opening?.then((database) => database.close()).catch(() => undefined);
    this.opening = null;
  }
}
