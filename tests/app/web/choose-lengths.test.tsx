// @vitest-environment happy-dom
import { act } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../../app/web/App.tsx';
import { BelowPlan } from '../../../app/web/late-rooms.tsx';
import { useApp } from '../../../app/web/state/app-store.ts';
import { chooseLengths } from '../../../app/web/state/lengths.ts';
import { mounted } from './nightrun/mounted.tsx';

// what stands below the plan waits for no picture here
vi.mock('../../../app/web/picture-or-none.ts', () => ({ pictureOrNone: () => Promise.resolve() }));

/** All that the page writes, piece by piece, names of fields and tips too. */
const pieces = (): string[] =>
  [...document.querySelectorAll('main *')].flatMap((element) => [
    ...[...element.childNodes].flatMap((node) => (node.nodeType === 3 ? [node.textContent ?? ''] : [])),
    ...['aria-label', 'aria-valuetext', 'title'].flatMap((name) => element.getAttribute(name) ?? []),
  ]);
const inMetres = () => pieces().filter((piece) => /\d m(²|\/s)?(?![\p{L}\d])|^m$/u.test(piece));
const inFeet = () => pieces().filter((piece) => /\d ft\b|^ft$/.test(piece));

describe('a choice of lengths', () => {
  afterEach(() => act(() => chooseLengths('metres')));

  it('writes all of the page anew as it stands: the menu stays open, the focus where it was', async () => {
    await BelowPlan.fetch();
    const { subjects } = useApp.getState().history.present;
    useApp.getState().select({ kind: 'subject', subjectId: subjects[0]?.id ?? '' });
    const page = mounted(<App />);
    await act(async () => undefined);
    expect(inMetres().length).toBeGreaterThan(15);
    expect(inFeet()).toEqual([]);
    expect(document.querySelector('.subjects .slip-open')).not.toBeNull();
    const menu = document.querySelector<HTMLDetailsElement>('.menu') as HTMLDetailsElement;
    act(() => {
      menu.open = true;
    });
    const choice = [...menu.querySelectorAll('select')].find(({ value }) => value === 'metres');
    if (!choice) throw new Error('no choice of lengths');
    choice.focus();
    act(() => {
      choice.value = 'feet';
      choice.dispatchEvent(new Event('change', { bubbles: true }));
    });
    expect(menu.isConnected && menu.open).toBe(true);
    expect(document.activeElement).toBe(choice);
    expect(inMetres()).toEqual([]);
    expect(inFeet().length).toBeGreaterThan(15);
    page.leave();
  });
});
