import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { renameSetup } from '../../../app/web/state/edits/setup-edits.ts';
import { createAppStore } from '../../../app/web/state/store.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const refuse = () => {
  throw new EditRefused('It cannot be so.');
};

describe('a notice', () => {
  it('of what could not be done stays until something else is done', () => {
    const store = createAppStore(stones);
    const { edit, select, chooseFrame } = store.getState();
    edit(refuse);
    select({ kind: 'camera' });
    chooseFrame('painted');
    edit((setup) => setup);
    expect(store.getState().notice).toEqual({ tone: 'problem', text: 'It cannot be so.' });
    edit((setup) => renameSetup(setup, 'Another'));
    expect(store.getState().notice).toBeNull();
  });

  it('of what could not be done goes when something else is opened', () => {
    const store = createAppStore(stones);
    store.getState().tell({ tone: 'problem', text: 'That file was not opened.' });
    store.getState().open({ ...stones, id: 'another' });
    expect(store.getState().notice).toBeNull();
  });

  it('of what was done stays over the next edit: it may be taken back there', () => {
    const store = createAppStore(stones);
    const done = { tone: 'done', text: 'Done.', undo: () => undefined } as const;
    store.getState().tell(done);
    store.getState().edit((setup) => renameSetup(setup, 'Another'));
    expect(store.getState().notice).toBe(done);
  });
});
