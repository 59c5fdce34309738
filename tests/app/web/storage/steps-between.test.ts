import { beforeEach, describe, expect, it } from 'vitest';
import { clearOwn, deleteOwn, renameOwn } from '../../../../app/web/state/kept-setups.ts';
import { allKept, freshBrowser, keptNotes, stones, Tab } from './tabs.ts';

/** A tab that has opened a setup of its own, then another, with the first one step back. */
const twoSetups = async () => {
  const tab = new Tab();
  tab.write('one');
  await tab.flush();
  const first = tab.key as string;
  const next = { ...stones(), name: 'Other' };
  tab.saving.documents.beginOwn(next);
  tab.app.getState().open(next);
  await tab.flush();
  return { tab, first, second: tab.key as string };
};
const names = async () => (await allKept()).map(({ summary }) => summary.name).sort();

describe('steps of the history from one kept setup to another', () => {
  beforeEach(freshBrowser);

  it.each([
    ['can still be brought back', false],
    ['is cleared away', true],
  ])('one that was deleted and %s is kept again when a step leads to it, and that is said', async (_, isCleared) => {
    const { tab, first, second } = await twoSetups();
    await deleteOwn(tab.saving, first);
    tab.state.getState().tell({ kind: 'deleted', key: first, name: 'Stones', wasOpen: false });
    expect(await names()).toEqual(['Other']);
    if (isCleared) await clearOwn(tab.saving, first);
    tab.app.getState().undo();
    await tab.flush();
    expect(tab.key).toBe(first);
    // the notice that it is deleted, closed late
    await clearOwn(tab.saving, first);
    expect(await names()).toEqual(['Other', stones().name].sort());
    expect(tab.news).toEqual(['brought back']);
    expect(second).not.toBe(first);
  });

  it('one that was renamed from the list has its new name when a step leads to it, and stays one', async () => {
    const { tab, first } = await twoSetups();
    await renameOwn(tab.saving, first, 'By the gate');
    tab.app.getState().undo();
    expect(tab.present.name).toBe('By the gate');
    tab.write('more');
    await tab.flush();
    expect(tab.key).toBe(first);
    expect(tab.news).toEqual([]);
    expect(await names()).toEqual(['By the gate', 'Other']);
  });

  it('a rename of one leaves the steps forward, and the setup on screen, as they are', async () => {
    const { tab, first } = await twoSetups();
    const shown = tab.present;
    await renameOwn(tab.saving, first, 'By the gate');
    expect(tab.present).toBe(shown);
    tab.app.getState().undo();
    tab.app.getState().redo();
    expect(tab.present).toBe(shown);
  });

  it('a step back to before it was taken up again goes on with the same setup, where nobody else wrote', async () => {
    const { tab, first } = await twoSetups();
    await tab.open(first);
    tab.write('two');
    await tab.flush();
    for (let n = 0; n < 3; n++) tab.app.getState().undo();
    tab.write('three');
    await tab.flush();
    expect(tab.key).toBe(first);
    expect(tab.news).toEqual([]);
    expect((await keptNotes()).sort()).toEqual([stones().note, `${stones().note} one three`]);
  });
});
