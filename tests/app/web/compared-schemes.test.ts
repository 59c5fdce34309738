import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { useApp } from '../../../app/web/state/app-store.ts';
import { comparedSchemes, mostCompared } from '../../../app/web/state/compared-schemes.ts';
import { duplicateScheme } from '../../../app/web/state/edits/frame-edits.ts';
import { useSession } from '../../../app/web/state/session.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const manySchemes = (count: number) => {
  let setup = stones;
  while (setup.schemes.length < count) setup = duplicateScheme(setup, 'side').setup;
  return setup;
};
const shownIds = () =>
  comparedSchemes(useApp.getState().history.present, useSession.getState().comparedIds).map(({ id }) => id);
const at = (number: number) => useApp.getState().history.present.schemes[number - 1]?.id as string;

describe('the schemes that are compared', () => {
  beforeEach(() => {
    useSession.setState({ room: 'viewfinder', comparedIds: null });
    useApp.getState().open(manySchemes(16));
  });

  it('has the present one among them, however far down the tabs it stands, and keeps it while another is chosen', () => {
    useApp.getState().chooseScheme(at(13));
    useSession.getState().set({ room: 'compare' });
    expect(shownIds()).toEqual([at(1), at(2), at(3), at(4), at(5), at(13)]);
    useApp.getState().chooseScheme(at(2));
    expect(shownIds()).toContain(at(13));
    useApp.getState().chooseScheme(at(15));
    expect(shownIds()).toContain(at(15));
    expect(shownIds()).toHaveLength(mostCompared);
  });

  it('joins those that were chosen where there is room', () => {
    useSession.getState().set({ room: 'compare', comparedIds: [at(1), at(8)] });
    useApp.getState().chooseScheme(at(4));
    expect(shownIds()).toEqual([at(1), at(4), at(8)]);
  });
});
