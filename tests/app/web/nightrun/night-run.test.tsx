// @vitest-environment happy-dom
import { act } from 'react';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NightLog } from '../../../../app/web/nightrun/NightLog.tsx';
import { RunRoom } from '../../../../app/web/nightrun/RunRoom.tsx';
import { useApp } from '../../../../app/web/state/app-store.ts';
import { useNightRun } from '../../../../app/web/state/night-run.ts';
import { isTyping } from '../../../../app/web/ui/is-typing.ts';
import { cardData } from '../../../../core/card/card-data.ts';
import { runSteps } from '../../../../core/card/run-steps.ts';
import { reportScheme } from '../../../../core/cautions/setup-report.ts';
import type { Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { mounted } from './mounted.tsx';

const stones = useApp.getState().history.present;
const scheme = stones.schemes[0] as Scheme;
const card = cardData(stones, scheme, reportScheme(stones, scheme));
const nights = () => useApp.getState().history.present.nights;
const said = () => document.querySelector('[role="status"]')?.textContent;
const focused = () => document.activeElement;
const night = (n: number): Setup['nights'][number] => ({
  id: `night-${n}`,
  startedAt: '2025-10-12T22:30:00',
  schemeId: scheme.id,
  schemeName: scheme.name,
  note: '',
  runs: [],
  photos: [],
});
const startWith = (count: number) =>
  useApp.getState().startOn({ ...stones, nights: Array.from({ length: count }, (_, i) => night(i)) });

let page: ReturnType<typeof mounted>;
beforeEach(() => {
  useNightRun.setState(useNightRun.getInitialState(), true);
  startWith(0);
});
afterEach(() => page.leave());

describe('the running order of a night', () => {
  it('has a step for a frame without a lamp, in its place, with what the camera is set to', () => {
    // the sample has a frame of the sky, then one that is painted
    expect(runSteps(card).map((step) => step.kind)).toEqual(['frame', ...card.rows.map(() => 'pass')]);
    page = mounted(<RunRoom card={card} />);
    const [sky] = scheme.frames;
    const text = document.body.textContent;
    expect(text).toContain(`Frame 1 of ${scheme.frames.length} · ${sky?.name}: no lamp`);
    expect(text).toMatch(/\d+ s · f\/[\d.]+ · ISO \d+ · \d+ K · focus /);
    expect(text).not.toContain('Too bright');
    page.press('Done');
    expect(document.body.textContent).toContain('Too bright');
    page.leave();
    page = mounted(<RunRoom card={card} />);
    expect(document.body.textContent).toContain('Too bright');
    expect(nights()).toEqual([]);
  });

  it('reads out what is next: the focus goes to it, also where the button pressed is off then', () => {
    page = mounted(<RunRoom card={card} />);
    page.press('Next');
    expect(focused()?.tagName).toBe('H2');
    expect(focused()?.textContent).toContain(card.rows[0]?.name);
    page.press('Too bright');
    expect(focused()).toBe(page.button('Too bright'));
    page.press('Undo');
    expect(page.button('Undo').disabled).toBe(true);
    expect(focused()?.tagName).toBe('H2');
  });

  it('a pass that the log has no room for is not called done: why is said, and what to do', () => {
    startWith(60);
    page = mounted(<RunRoom card={card} />);
    page.press('Next');
    const before = document.querySelector('h2')?.textContent;
    page.press('Done');
    expect(said()).toMatch(/at most 60 nights. Delete an old one under “Nights” first/);
    expect(document.querySelector('h2')?.textContent).toBe(before);
    expect(nights()).toHaveLength(60);
    expect(useApp.getState().notice).toBeNull();
  });
});

describe('the log', () => {
  it('after a night is deleted, the focus is on the next, at last on the heading; also after Undo', () => {
    startWith(2);
    page = mounted(<NightLog card={card} />);
    page.press('Delete');
    expect(focused()?.tagName).toBe('H3');
    expect(focused()?.id).toBe('heading-night-0');
    page.press('Delete');
    expect(focused()?.textContent).toBe('Nights');
    page.press('Undo');
    expect(nights()).toHaveLength(1);
    expect(focused()?.textContent).toBe('Nights');
  });

  it('notes are kept while they are typed, as one step; the field undoes its own letters meanwhile', () => {
    startWith(1);
    page = mounted(<NightLog card={card} />);
    const field = document.querySelector('textarea') as HTMLTextAreaElement;
    const type = (text: string) =>
      act(() => {
        // as the browser sets it, past React
        Object.getOwnPropertyDescriptor(HTMLTextAreaElement.prototype, 'value')?.set?.call(field, text);
        field.dispatchEvent(new Event('input', { bubbles: true }));
      });
    expect(isTyping(field)).toBe(false);
    type('De');
    type('Dew');
    expect(nights()[0]?.note).toBe('Dew');
    expect(useApp.getState().history.past).toHaveLength(1);
    expect(isTyping(field)).toBe(true);
    expect(isTyping(document.body)).toBe(false);
    act(() => void field.dispatchEvent(new FocusEvent('focusout', { bubbles: true })));
    expect(isTyping(field)).toBe(false);
  });
});
