import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { addScanSubject } from '../../../../app/web/state/edits/scan-edits.ts';
import {
  bringBackOwn,
  clearOwn,
  deleteOwn,
  duplicateOwn,
  GoneSetup,
  readOwn,
  renameOwn,
} from '../../../../app/web/state/kept-setups.ts';
import { changeSummary, clearDeleted } from '../../../../app/web/storage/change-summary.ts';
import { listSetups } from '../../../../app/web/storage/list-setups.ts';
import type { SetupSummary } from '../../../../app/web/storage/records.ts';
import { setupText } from '../../../../app/web/storage/setup-text.ts';
import { encodeScan } from '../../../../core/scan/scan-code.ts';
import { formatSetup } from '../../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import { numberedSoup } from '../../../core/scan/soups.ts';
import { allKept, freshBrowser, keptNotes, stones, Tab } from './tabs.ts';

const scan = encodeScan(numberedSoup(60, [2, 1, 2], 3));
const list = (tab: Tab) => tab.connection.use(listSetups);
const summaryOf = async (tab: Tab) => (await list(tab)).find(({ key }) => key === tab.key) as SetupSummary;

describe('setupText', () => {
  it.each(['three-stones', 'turf-hut', 'drystone-wall', 'lesson-near-and-far'])(
    'writes %s so that it reads back',
    (name) => {
      const setup = parseSetup(readFileSync(`assets/setups/${name}.json`, 'utf8'));
      expect(parseSetup(setupText(setup))).toEqual(setup);
      const edited = { ...setup, subjects: setup.subjects.slice(1).map((s) => ({ ...s, name: `“${s.name}”` })) };
      expect(JSON.parse(setupText(edited))).toEqual(edited);
    },
  );

  it('leaves the data of scans out', () => {
    const { setup } = addScanSubject(stones(), 'side', 'rock.glb', scan, 0.3);
    expect(setupText(setup)).not.toContain(scan.data);
    expect(JSON.parse(setupText(setup)).scans).toEqual(setup.scans.map((each) => ({ ...each, data: '' })));
  });
});

describe('kept setups', () => {
  beforeEach(freshBrowser);

  /** A tab with one setup of the user's own. */
  const own = async () => {
    const tab = new Tab();
    tab.write('mine');
    await tab.flush();
    return tab;
  };

  it('a sample is kept once it is changed, as a copy; as it was opened it is not', async () => {
    const tab = new Tab();
    await tab.flush();
    tab.app.getState().select(null);
    tab.app.getState().open(tab.present);
    await tab.flush();
    expect(await list(tab)).toEqual([]);
    expect(tab.key).toBeNull();
    tab.write('y');
    expect(tab.app.getState().hasUnsaved).toBe(true);
    await tab.flush();
    expect(await list(tab)).toMatchObject([{ key: tab.key, name: 'Three standing stones', sampleId: 'three-stones' }]);
    expect(tab.app.getState().hasUnsaved).toBe(false);
    // taken back it stays kept, as it was
    tab.app.getState().undo();
    await tab.flush();
    expect(await allKept()).toMatchObject([{ setup: stones() }]);
  });

  it('a setup of the user’s own is kept at once; each taken up is kept apart, whatever its id', async () => {
    const tab = new Tab();
    for (let i = 0; i < 2; i++) {
      const setup = stones();
      tab.saving.documents.beginOwn(setup);
      tab.app.getState().open(setup);
    }
    await tab.flush();
    expect(await list(tab)).toMatchObject([{ sampleId: null }, { sampleId: null }]);
    // a step back leads to the one before, which is then the one that is changed
    tab.app.getState().undo();
    tab.write('first');
    await tab.flush();
    expect((await keptNotes()).filter((note) => note.endsWith('first'))).toHaveLength(1);
    expect(await list(tab)).toHaveLength(2);
  });

  it('says how large the file is, and reads back the very setup, with its scans', async () => {
    const tab = await own();
    tab.app.getState().edit((setup) => addScanSubject(setup, 'side', 'rock.glb', scan, 0.3).setup);
    await tab.flush();
    expect(await allKept()).toMatchObject([{ setup: tab.present }]);
    expect((await summaryOf(tab)).bytes).toBe(new TextEncoder().encode(formatSetup(tab.present)).length);
  });

  it('writes the data of a scan once, and clears it away when it is gone; undo writes it again', async () => {
    const tab = await own();
    tab.app.getState().edit((setup) => addScanSubject(setup, 'side', 'rock.glb', scan, 0.3).setup);
    await tab.flush();
    const scans = () => tab.connection.use((database) => database.getAllKeys('scans'));
    const before = await scans();
    expect(before).toHaveLength(1);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put');
    tab.write('more');
    await tab.flush();
    expect(put.mock.contexts.map((store) => (store as IDBObjectStore).name).sort()).toEqual(['setups', 'summaries']);
    put.mockRestore();
    tab.app.getState().edit((setup) => ({ ...setup, scans: [], subjects: stones().subjects }));
    await tab.flush();
    expect(await scans()).toEqual([]);
    tab.app.getState().undo();
    await tab.flush();
    expect(await scans()).toEqual(before);
    expect(await allKept()).toMatchObject([{ setup: tab.present }]);
  });

  it('renames, duplicates, deletes, brings back and clears away', async () => {
    const tab = await own();
    const key = tab.key as string;
    await tab.connection.use((database) => changeSummary(database, key, { thumbnail: 'data:image/jpeg;base64,AA==' }));
    const copy = await duplicateOwn(tab.saving, key);
    await renameOwn(tab.saving, copy, 'By the gate');
    expect((await list(tab)).map(({ name, thumbnail }) => [name, thumbnail])).toEqual([
      ['By the gate', 'data:image/jpeg;base64,AA=='],
      ['Three standing stones', 'data:image/jpeg;base64,AA=='],
    ]);
    expect(await readOwn(tab.saving, copy)).toEqual({ ...tab.present, name: 'By the gate' });
    await deleteOwn(tab.saving, copy);
    await expect(readOwn(tab.saving, copy)).rejects.toThrow(GoneSetup);
    expect(await list(tab)).toHaveLength(1);
    expect(await bringBackOwn(tab.saving, copy)).toBe(true);
    expect(await readOwn(tab.saving, copy)).toEqual({ ...tab.present, name: 'By the gate' });
    // what was brought back is not cleared away
    await clearOwn(tab.saving, copy);
    expect(await list(tab)).toHaveLength(2);
    await deleteOwn(tab.saving, copy);
    await tab.connection.use((database) => clearDeleted(database, { before: Date.now() - 1000 }));
    expect(await tab.connection.use((database) => database.count('setups'))).toBe(2);
    await tab.connection.use((database) => clearDeleted(database, { before: Date.now() + 1 }));
    expect(await tab.connection.use((database) => database.count('setups'))).toBe(1);
    expect(await bringBackOwn(tab.saving, copy)).toBe(false);
  });

  it('a change to what is on screen is kept before it is duplicated or deleted', async () => {
    const tab = await own();
    tab.write('late');
    await duplicateOwn(tab.saving, tab.key as string);
    expect(await keptNotes()).toEqual([expect.stringContaining('mine late'), expect.stringContaining('mine late')]);
  });

  it('a write keeps the small picture, and a small picture no write', async () => {
    const tab = await own();
    const thumbnail = 'data:image/jpeg;base64,AA==';
    await tab.connection.use((database) => changeSummary(database, tab.key as string, { thumbnail }));
    tab.write('more');
    await tab.flush();
    expect(await list(tab)).toMatchObject([{ thumbnail }]);
    expect(tab.news).toEqual([]);
  });

  it.each([
    ['not JSON', '{"format":', /JSON of a setup/],
    ['another thing', '[]', /must hold one setup/],
    ['a wrong field', JSON.stringify({ ...stones(), bounces: 7 }), /^bounces: /],
    ['a newer version', JSON.stringify({ ...stones(), version: 99 }), /newer Lampfall/],
    ['a broken scan', null, /^scans\[0\]\.data: /],
  ])('%s can’t be used: it says why, stays as it is, and is handed out as a file', async (_, text, why) => {
    const tab = await own();
    const key = tab.key as string;
    if (text !== null) await tab.connection.use((database) => database.put('setups', { text, scanKeys: [] }, key));
    else {
      tab.app.getState().edit((setup) => addScanSubject(setup, 'side', 'rock.glb', scan, 0.3).setup);
      await tab.flush();
      const [scanKey] = await tab.connection.use((database) => database.getAllKeys('scans'));
      await tab.connection.use((database) => database.put('scans', 'AAAA', scanKey));
    }
    const before = await tab.connection.use((database) => database.get('setups', key));
    await expect(readOwn(tab.saving, key)).rejects.toMatchObject({
      name: 'BrokenSetup',
      message: expect.stringMatching(why),
      setupName: 'Three standing stones',
      text: text ?? expect.stringContaining('"data":"AAAA"'),
    });
    expect(await tab.connection.use((database) => database.get('setups', key))).toEqual(before);
    // it can still be deleted
    await deleteOwn(tab.saving, key);
    expect(await list(tab)).toEqual([]);
  });
});
