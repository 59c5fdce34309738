// @vitest-environment happy-dom
import { beforeEach, describe, expect, it } from 'vitest';
import { useApp } from '../../../app/web/state/app-store.ts';
import { setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { duplicatePass, movePass } from '../../../app/web/state/edits/pass-edits.ts';
import { isLampHinted, putHintsAway, readHints, useHints } from '../../../app/web/state/hints.ts';
import { samples } from '../../../app/web/state/samples.ts';
import { startStoresOver } from '../../../app/web/state/start-over.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

const away = () => useHints.getState().away;
const place = () => {
  const { history } = useApp.getState();
  const [scheme] = history.present.schemes as [Setup['schemes'][number]];
  const frame = scheme.frames.find(({ passes }) => passes.length > 0);
  const [pass] = frame?.passes ?? [];
  if (!frame || !pass) throw new Error('the first sample has a lamp');
  return { schemeId: scheme.id, frameId: frame.id, passId: pass.id };
};

describe('hints', () => {
  beforeEach(() => {
    localStorage.clear();
    startStoresOver();
  });

  it('are all there for a new user, and one goes when what it says was done', () => {
    expect(away()).toEqual([]);
    useApp.getState().edit((setup) => movePass(setup, place(), [1, -5, 0.8]));
    expect(away()).toEqual(['lamp']);
    useApp.getState().edit((setup) => setFrameNumber(setup, place(), 'aperture', 2.8));
    expect(away()).toEqual(['lamp', 'aperture']);
  });

  it('stay while a drag is under way, so that nothing moves under the hand', () => {
    const { begin, edit, commit } = useApp.getState();
    begin();
    edit((setup) => movePass(setup, place(), [1, -5, 0.8]));
    expect(away()).toEqual([]);
    commit();
    expect(away()).toEqual(['lamp']);
  });

  it('take no other edit for an answer, nor another document', () => {
    const { edit, open, history } = useApp.getState();
    edit((setup) => duplicatePass(setup, place()));
    edit((setup) => setFrameNumber(setup, place(), 'iso', 800));
    open({ ...history.present, id: 'another' });
    expect(away()).toEqual([]);
  });

  it('ask for a lamp at six only in the setup that the page opens on', async () => {
    expect(isLampHinted(useApp.getState().history.present)).toBe(true);
    for (const { load } of samples.slice(1, 5)) expect(isLampHinted(await load())).toBe(false);
  });

  it('come no more once they were put away, also when the page is opened again', () => {
    putHintsAway('welcome', 'aperture');
    useHints.setState({ away: [] });
    readHints();
    expect(away()).toEqual(['welcome', 'aperture']);
  });
});
