import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { bringBackOwn, clearOwn, deleteOwn } from '../../../../app/web/state/kept-setups.ts';
import { allKept, cutChannel, freshBrowser, keptNotes, stones, Tab } from './tabs.ts';

const names = async () => (await allKept()).map(({ summary }) => summary.name).sort();

describe('two tabs on one setup', () => {
  beforeEach(freshBrowser);

  /** Two tabs that have read the same setup. */
  const both = async () => {
    const first = new Tab();
    first.write('one');
    await first.flush();
    const second = new Tab();
    await second.open(first.key as string);
    return [first, second] as const;
  };

  it('when both change it, both are kept: the later as a second copy, which its tab goes on with and is told of', async () => {
    const [first, second] = await both();
    first.write('first');
    await first.flush();
    // before it could hear of it
    second.write('second');
    await second.flush();
    expect((await keptNotes()).sort()).toEqual(
      ['one first', 'one second'].map((words) => expect.stringContaining(words)),
    );
    expect(await names()).toEqual(['Three standing stones', 'Three standing stones, second copy']);
    expect(second.present.name).toBe('Three standing stones, second copy');
    expect(second.key).not.toBe(first.key);
    expect(second.news).toContain('second copy');
    expect(first.news).not.toContain('second copy');
    second.write('more');
    first.write('again');
    await Promise.all([first.flush(), second.flush()]);
    expect(await names()).toHaveLength(2);
    // no longer about what is open
    expect(second.news).toContain('second copy');
    second.app.getState().open({ ...stones(), id: 'elsewhere' });
    expect(second.news).toEqual([]);
  });

  it('one that is unchanged is offered what the other wrote, and goes on from it once taken up', async () => {
    const [first, second] = await both();
    first.write('first');
    await first.flush();
    expect(second.news).toEqual(['changed elsewhere']);
    expect(first.news).toEqual([]);
    await second.open(second.key as string);
    expect(second.present.note).toContain('one first');
    expect(second.news).toEqual([]);
    second.write('second');
    await second.flush();
    expect(await keptNotes()).toEqual([expect.stringContaining('one first second')]);
  });

  it('a step back to before it was taken up does not write over the other tab’s work', async () => {
    const [first, second] = await both();
    first.write('first');
    await first.flush();
    await second.open(second.key as string);
    second.app.getState().undo();
    await second.flush();
    expect(await keptNotes()).toEqual([expect.stringContaining('one first')]);
    second.write('second');
    await second.flush();
    expect((await keptNotes()).sort()).toEqual(
      ['one first', 'one second'].map((words) => expect.stringContaining(words)),
    );
  });

  it('deleting it in one tab does not lose it in the other: the next change there brings it back, cleared away or not', async () => {
    for (const isCleared of [false, true]) {
      freshBrowser();
      const [first, second] = await both();
      const key = first.key as string;
      await deleteOwn(first.saving, key);
      if (isCleared) await clearOwn(first.saving, key);
      expect(await names()).toEqual([]);
      expect(second.news).toEqual(['deleted elsewhere']);
      second.write('second');
      await second.flush();
      expect(await keptNotes()).toEqual([expect.stringContaining('one second')]);
      expect(second.news).toContain('brought back');
      // the first tab's undo finds it there, and clearing it away does not take it
      if (!isCleared) expect(await bringBackOwn(first.saving, key)).toBe(true);
      await clearOwn(first.saving, key);
      expect(await names()).toHaveLength(1);
    }
  });

  it('without a way between tabs the same holds', async () => {
    const [first, second] = await both();
    cutChannel();
    first.write('first');
    await first.flush();
    expect(second.news).toEqual([]);
    second.write('second');
    await second.flush();
    expect(await names()).toHaveLength(2);
  });

  it('loses no word that anybody wrote, whatever the order of edits, saves, taking up and opening (seed 20)', async () => {
    const step = fc.record({
      tab: fc.nat(2),
      does: fc.constantFrom('write', 'write', 'write', 'flush', 'take up', 'open', 'wait'),
      waits: fc.boolean(),
      which: fc.nat(5),
    });
    let copies = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 6, maxLength: 30 }), async (steps) => {
        freshBrowser();
        const tabs = [new Tab(), new Tab(), new Tab()] as const;
        tabs[0].write('w0');
        await tabs[0].flush();
        for (const tab of tabs.slice(1)) await tab.open(tabs[0].key as string);
        const words = ['w0'];
        const under: Promise<unknown>[] = [];
        for (const { tab: t, does, waits, which } of steps) {
          const tab = tabs[t] as Tab;
          const open = async (key: string | null | undefined) => {
            // what was written meanwhile is not dropped: it is a step back, and kept
            if (key) await tab.open(key);
          };
          let doing: Promise<unknown> = Promise.resolve();
          if (does === 'write') {
            words.push(`w${words.length}`);
            tab.write(words.at(-1) as string);
          } else if (does === 'flush') doing = tab.flush();
          else if (does === 'take up') doing = open(tab.key);
          else if (does === 'open') doing = allKept().then((list) => open(list[which % list.length]?.summary.key));
          else doing = new Promise((resolve) => setTimeout(resolve, 1));
          under.push(doing);
          if (waits) await doing;
        }
        await Promise.all(under);
        for (const tab of tabs) await tab.flush();
        const notes = await keptNotes();
        copies += notes.length - 1;
        const there = new Set(notes.flatMap((note) => note.split(' ')));
        expect(words.filter((word) => !there.has(word))).toEqual([]);
        for (const tab of tabs) {
          const own = (await allKept()).find(({ summary }) => summary.key === tab.key);
          // it has what is kept, or was told that there is newer
          if (!tab.news.includes('changed elsewhere')) expect(own).toMatchObject({ setup: tab.present });
        }
      }),
      { numRuns: 30, seed: 20 },
    );
    expect(copies).toBeGreaterThan(10);
  });
});
