import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Connection } from '../../../../app/web/storage/connection.ts';
import { databaseName, databaseVersion } from '../../../../app/web/storage/database.ts';
import { deleteKeptLamp, keptLamps, putKeptLamp } from '../../../../app/web/storage/lamps-kept.ts';
import { listSetups } from '../../../../app/web/storage/list-setups.ts';
import { freshBrowser, keptNotes, stones, Tab } from './tabs.ts';

/** Has one step of the store throw until it is restored. */
const failing = (step: 'put' | 'get', name: string) =>
  vi.spyOn(IDBObjectStore.prototype, step).mockImplementation(() => {
    throw new DOMException('no', name);
  });

describe('trouble with the browser’s storage', () => {
  beforeEach(freshBrowser);
  afterEach(() => void vi.restoreAllMocks());
  const problem = (tab: Tab) => tab.state.getState().problem;

  it.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'denied'],
    ['UnknownError', 'broken'],
  ])(
    '%s while writing: told once as “%s”, what is kept stays, and the next change is kept with the rest',
    async (name, kind) => {
      const tab = new Tab();
      tab.write('before');
      await tab.flush();
      const put = failing('put', name);
      tab.write('during');
      await tab.flush();
      tab.write('still');
      await tab.flush();
      expect(problem(tab)).toBe(kind);
      expect(tab.news).toEqual(['problem']);
      expect(tab.saving.wouldLose).toBe(true);
      put.mockRestore();
      expect(await keptNotes()).toEqual([expect.stringMatching(/before$/)]);
      tab.write('after');
      await tab.flush();
      expect(await keptNotes()).toEqual([expect.stringMatching(/before during still after$/)]);
      expect(problem(tab)).toBeNull();
      expect(tab.news).toEqual([]);
      expect(tab.saving.wouldLose).toBe(false);
    },
  );

  it('what could not be read back is not written: what was kept stays, it is said, and the next good change is kept', async () => {
    const tab = new Tab();
    tab.write('before');
    await tab.flush();
    tab.write('\u0007');
    await tab.flush();
    expect(problem(tab)).toBe('unreadable');
    expect(tab.news).toEqual(['problem']);
    expect(tab.saving.wouldLose).toBe(true);
    expect(await keptNotes()).toEqual([expect.stringMatching(/before$/)]);
    tab.app.getState().undo();
    tab.write('after');
    await tab.flush();
    expect(problem(tab)).toBeNull();
    expect(await keptNotes()).toEqual([expect.stringMatching(/before after$/)]);
  });

  it('a file saved by hand is enough to leave', async () => {
    const tab = new Tab();
    failing('put', 'QuotaExceededError');
    tab.write('x');
    await tab.flush();
    tab.app.getState().markSaved();
    expect(tab.saving.wouldLose).toBe(false);
    tab.app.getState().undo();
    expect(tab.saving.wouldLose).toBe(true);
  });

  it('room that runs out when the transaction ends counts as full, too, and leaves nothing half written', async () => {
    const tab = new Tab();
    tab.write('before');
    await tab.flush();
    const original = IDBObjectStore.prototype.put;
    let calls = 0;
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      const request = original.apply(this, args);
      if (++calls === 2) {
        const { transaction } = this;
        Object.defineProperty(transaction, 'error', { get: () => new DOMException('no room', 'QuotaExceededError') });
        transaction.abort();
      }
      return request;
    });
    tab.write('during');
    await tab.flush();
    put.mockRestore();
    expect(calls).toBe(2);
    expect(problem(tab)).toBe('full');
    expect(await keptNotes()).toEqual([expect.stringMatching(/before$/)]);
  });

  it.each([
    ['there is none', () => vi.stubGlobal('indexedDB', undefined)],
    [
      'it refuses',
      () =>
        vi.stubGlobal('indexedDB', {
          open: () => {
            throw new DOMException('no', 'SecurityError');
          },
        }),
    ],
  ])('denied where %s: nothing is said before there is something to lose', async (_, deny) => {
    deny();
    const tab = new Tab();
    await tab.flush();
    expect(tab.news).toEqual([]);
    tab.write('x');
    await tab.flush();
    expect(problem(tab)).toBe('denied');
    expect(tab.present.note).toMatch(/x$/);
    vi.unstubAllGlobals();
  });

  it('one that does not answer is given up after five seconds, and tried anew with the next change', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'Date'] });
    const silence = { addEventListener: { value: () => undefined }, removeEventListener: { value: () => undefined } };
    vi.stubGlobal('indexedDB', { open: () => Object.create(IDBOpenDBRequest.prototype, silence) });
    const tab = new Tab();
    tab.write('x');
    const flushed = tab.flush();
    await vi.advanceTimersByTimeAsync(4900);
    expect(problem(tab)).toBeNull();
    expect(tab.saving.wouldLose).toBe(true);
    await vi.advanceTimersByTimeAsync(200);
    await flushed;
    expect(problem(tab)).toBe('hangs');
    vi.unstubAllGlobals();
    vi.useRealTimers();
    freshBrowser();
    tab.write('y');
    await tab.flush();
    expect(problem(tab)).toBeNull();
    expect(await keptNotes()).toEqual([expect.stringMatching(/x y$/)]);
  });

  it('gives way to a page of a newer build, says so, and loses nothing by it', async () => {
    const tab = new Tab();
    tab.write('old');
    await tab.flush();
    const newer = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open(databaseName, databaseVersion + 1);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    expect([...newer.objectStoreNames]).toEqual(['lamps', 'scans', 'setups', 'summaries']);
    tab.write('lost on nobody');
    await tab.flush();
    expect(problem(tab)).toBe('newer');
    // nor does an older page that is opened now
    await expect(new Connection().use(listSetups)).rejects.toMatchObject({ kind: 'newer' });
    const texts = await new Promise<{ text: string }[]>((resolve) => {
      const request = newer.transaction('setups').objectStore('setups').getAll();
      request.onsuccess = () => resolve(request.result);
    });
    expect(texts.map(({ text }) => JSON.parse(text).note)).toEqual([expect.stringMatching(/old$/)]);
    newer.close();
  });

  it('a store that the browser closed is opened again', async () => {
    const tab = new Tab();
    tab.write('one');
    await tab.flush();
    await tab.connection.use(async (database) => database.close());
    tab.write('two');
    await tab.flush();
    expect(problem(tab)).toBeNull();
    expect(await keptNotes()).toEqual([expect.stringMatching(/one two$/)]);
  });
});

describe('kept lamps', () => {
  beforeEach(freshBrowser);

  it('are put, replaced by id, listed with the latest first, and deleted', async () => {
    const { connection } = new Tab();
    const [lamp] = stones().lamps;
    if (!lamp) throw new Error('no lamp');
    const kept = (id: string, keptAt: number) => ({ id, lamp, beam: null, keptAt });
    for (const each of [kept('a', 1), kept('b', 3), kept('a', 5)])
      await connection.use((database) => putKeptLamp(database, each));
    expect(await connection.use(keptLamps)).toEqual([kept('a', 5), kept('b', 3)]);
    await connection.use((database) => deleteKeptLamp(database, 'a'));
    expect(await connection.use(keptLamps)).toEqual([kept('b', 3)]);
  });
});
