import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { lightBy } from '../../../app/web/state/edits/light-by.ts';
import { createAppStore } from '../../../app/web/state/store.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';

const tree = parseSetup(readFileSync('assets/setups/lone-tree.json', 'utf8'));

describe('lightBy', () => {
  it('puts a scheme of its own behind the present one, which stays as it is', () => {
    const { setup, schemeId } = lightBy(tree, 'twin-rim', 'standing');
    expect(setup.schemes.map(({ id }) => id)).toEqual([
      'twin-rim',
      schemeId,
      ...tree.schemes.slice(1).map(({ id }) => id),
    ]);
    expect(setup.schemes[0]).toBe(tree.schemes[0]);
    expect(setup.schemes[1]?.name).toBe(`${tree.schemes[0]?.name} · standing lights`);
    expect(parseSetup(formatSetup(setup))).toEqual(setup);
  });

  it('names a strategy of a strategy for the last one, and never two alike', () => {
    const first = lightBy(tree, 'twin-rim', 'standing');
    const second = lightBy(first.setup, first.schemeId, 'one-frame');
    const third = lightBy(second.setup, 'twin-rim', 'one-frame');
    const nameOf = (id: string) => third.setup.schemes.find((scheme) => scheme.id === id)?.name;
    expect(nameOf(second.schemeId)).toBe(`${tree.schemes[0]?.name} · one frame`);
    expect(nameOf(third.schemeId)).toBe(`${tree.schemes[0]?.name} · one frame 2`);
  });

  it('refuses a scheme without lamps, and one scheme too many', () => {
    expect(() => lightBy(tree, 'none', 'separate')).toThrow(EditRefused);
    const schemes = Array.from({ length: 24 }, (_, k): Scheme => ({ ...(tree.schemes[0] as Scheme), id: `s${k}` }));
    expect(() => lightBy({ ...tree, schemes }, 's0', 'separate')).toThrow('at most 24 schemes');
  });

  it('is one step of the history; undone, the scheme that it was made of is back on screen', () => {
    const store = createAppStore(tree);
    let made = '';
    store.getState().edit((setup) => {
      const lit = lightBy(setup, 'long', 'separate');
      made = lit.schemeId;
      return lit.setup;
    });
    store.getState().chooseScheme(made);
    expect(store.getState().history.present.schemes).toHaveLength(tree.schemes.length + 1);
    expect(store.getState().schemeId).toBe(made);
    store.getState().undo();
    expect(store.getState().history.present).toBe(tree);
    expect(store.getState().schemeId).toBe('long');
  });
});
