// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { act } from 'react';
import { describe, expect, it } from 'vitest';
import { SchemeChecks } from '../../../app/web/compare/SchemeChecks.tsx';
import { useApp } from '../../../app/web/state/app-store.ts';
import { duplicateScheme } from '../../../app/web/state/edits/frame-edits.ts';
import { useSession } from '../../../app/web/state/session.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { mounted } from './nightrun/mounted.tsx';

describe('the list of schemes to compare', () => {
  it('says in itself that a seventh is too many, until one is taken away', () => {
    let setup = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
    while (setup.schemes.length < 8) setup = duplicateScheme(setup, 'side').setup;
    useApp.getState().open(setup);
    const ids = setup.schemes.map(({ id }) => id);
    useSession.setState({ comparedIds: ids.slice(0, 6) });
    const page = mounted(<SchemeChecks />);
    const boxes = () => [...document.querySelectorAll<HTMLInputElement>('input[type=checkbox]')];
    const alert = () => document.querySelector('.drop-list [role=alert]');
    expect(alert()).toBeNull();
    act(() => boxes()[6]?.click());
    expect(alert()?.textContent).toBe('6 schemes at most stand side by side. Take one away first.');
    // right under the one that was pressed
    expect(alert()?.previousElementSibling?.contains(boxes()[6] as Node)).toBe(true);
    expect(useSession.getState().comparedIds).toEqual(ids.slice(0, 6));
    expect(useApp.getState().notice).toBeNull();
    act(() => boxes()[0]?.click());
    expect(alert()).toBeNull();
    expect(useSession.getState().comparedIds).toEqual(ids.slice(1, 6));
    page.leave();
  });
});
