import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openLast } from '../../../../app/web/state/open-last.ts';
import { forgetOpen, markOpen } from '../../../../app/web/storage/open-mark.ts';
import { freshBrowser, stones, Tab } from './tabs.ts';

/** A tab's own memory, which a reload leaves. */
const freshTab = () => {
  const kept = new Map<string, string>();
  vi.stubGlobal('sessionStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  });
};

/** The page is opened, or loaded again. */
const opened = async () => {
  const tab = new Tab({ isStarted: false });
  await openLast(tab.saving);
  tab.saving.start();
  return tab;
};

describe('openLast', () => {
  beforeEach(() => {
    freshBrowser();
    freshTab();
  });
  afterEach(() => void vi.unstubAllGlobals());

  it('begins on the first sample where nothing is kept, which is not kept by that', async () => {
    const tab = await opened();
    expect(tab.present).toEqual(stones());
    await tab.flush();
    expect(tab.key).toBeNull();
    expect((await opened()).state.getState()).toMatchObject({ key: null, sampleId: 'three-stones' });
  });

  it('a reload opens what the tab had open, with nothing to undo and nothing to write; it goes on being the same setup', async () => {
    const before = await opened();
    before.write('mine');
    await before.flush();
    const tab = await opened();
    expect(tab.present).toEqual(before.present);
    expect(tab.key).toBe(before.key);
    expect(tab.app.getState()).toMatchObject({ history: { past: [], future: [] }, hasUnsaved: false });
    tab.write('more');
    await tab.flush();
    expect((await opened()).present.note).toMatch(/mine more$/);
  });

  it('a new tab opens what was opened last in any', async () => {
    const one = await opened();
    one.write('one');
    await one.flush();
    const setup = stones();
    one.saving.documents.beginOwn(setup);
    one.app.getState().open(setup);
    one.write('two');
    await one.flush();
    forgetOpen();
    expect((await opened()).present.note).toMatch(/two$/);
  });

  it('a sample or lesson without changes is opened again', async () => {
    markOpen('sample/drystone-wall');
    const tab = await opened();
    expect(tab.present.id).toBe('drystone-wall');
    expect(tab.state.getState()).toMatchObject({ key: null, sampleId: 'drystone-wall' });
    await tab.flush();
    tab.write('x');
    await tab.flush();
    expect(tab.key).not.toBeNull();
  });

  it('after a fault of the page, which marks nothing as open, it does not open the same again', async () => {
    const before = await opened();
    before.write('mine');
    await before.flush();
    markOpen('');
    expect((await opened()).present).toEqual(stones());
  });

  it('one that can’t be used is said, with what there is of it, and the page opens on the first sample', async () => {
    const before = await opened();
    before.write('mine');
    await before.flush();
    await before.connection.use((database) =>
      database.put('setups', { text: '{"a":', scanKeys: [] }, before.key as string),
    );
    const tab = await opened();
    expect(tab.present).toEqual(stones());
    expect(tab.state.getState().news).toMatchObject([{ kind: 'broken', text: '{"a":' }]);
  });

  it.each(['a setup of one’s own', 'a sample'])(
    '%s that can’t be read for want of a file of the page is said, to be tried again; it stays kept',
    async (what) => {
      const isOwn = what !== 'a sample';
      const before = await opened();
      before.write('mine');
      await before.flush();
      if (!isOwn) markOpen('sample/drystone-wall');
      vi.doMock('../../../../core/scan/read-setup.ts', () => {
        throw new TypeError('Failed to fetch dynamically imported module');
      });
      const tab = await opened();
      vi.doUnmock('../../../../core/scan/read-setup.ts');
      // a file that failed once is not kept as failing
      vi.resetModules();
      expect(tab.present).toEqual(stones());
      const last = isOwn ? { key: before.key } : { sampleId: 'drystone-wall' };
      expect(tab.state.getState().news).toEqual([{ kind: 'not opened', last }]);
      await tab.open(before.key as string);
      expect(tab.present.note).toMatch(/mine$/);
    },
  );

  it('one deleted in another tab: the page opens what was opened last before', async () => {
    const before = await opened();
    before.write('mine');
    await before.flush();
    markOpen('gone');
    expect((await opened()).present.note).toMatch(/mine$/);
  });

  it('waits a second for a store that does not answer; what comes late is taken up, unless something was begun', async () => {
    const before = await opened();
    before.write('mine');
    await before.flush();
    for (const begins of [false, true]) {
      const tab = new Tab({ isStarted: false });
      let answer = () => {};
      const use = tab.connection.use.bind(tab.connection);
      const late = new Promise<void>((resolve) => {
        answer = resolve;
      });
      vi.spyOn(tab.connection, 'use').mockImplementation((work) => late.then(() => use(work)));
      await openLast(tab.saving);
      tab.saving.start();
      expect(tab.present).toEqual(stones());
      if (begins) tab.write('begun');
      answer();
      await new Promise((resolve) => setTimeout(resolve, 100));
      expect(tab.present.note).toMatch(begins ? /begun$/ : /mine$/);
      await tab.flush();
      expect(tab.key === before.key).toBe(!begins);
    }
  });
});
