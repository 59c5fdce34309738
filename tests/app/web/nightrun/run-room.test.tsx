// @vitest-environment happy-dom
import { act } from 'react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { RunRoom } from '../../../../app/web/nightrun/RunRoom.tsx';
import { useApp } from '../../../../app/web/state/app-store.ts';
import {
  leaveNightRun,
  openNightRun,
  openNights,
  stepBack,
  watchNightPages,
} from '../../../../app/web/state/night-pages.ts';
import { useNightRun } from '../../../../app/web/state/night-run.ts';
import { cardData } from '../../../../core/card/card-data.ts';
import { reportScheme } from '../../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../../core/setup/schema/setup.ts';
import { cardOf, passFrom, stoneSetup } from '../../../core/card/card-setups.ts';
import { mounted } from './mounted.tsx';

const stones = useApp.getState().history.present;
const scheme = stones.schemes[0] as Scheme;
const card = cardData(stones, scheme, reportScheme(stones, scheme));
const runs = () => useApp.getState().history.present.nights.flatMap((night) => night.runs);
const text = () => document.body.textContent ?? '';
const timer = () => document.querySelector('[role="timer"]')?.textContent ?? '';
/** So much later a hand taps. */
const wait = (milliseconds: number) => act(() => void vi.advanceTimersByTime(milliseconds));

describe('the run in a gloved hand', () => {
  let page: ReturnType<typeof mounted>;
  beforeEach(() => {
    vi.useFakeTimers();
    useNightRun.setState(useNightRun.getInitialState(), true);
    useApp.getState().startOn(stones);
    page = mounted(<RunRoom card={card} />);
  });
  afterEach(() => {
    page.leave();
    vi.useRealTimers();
  });

  it('begins with the focus on the first button', () => {
    expect(document.activeElement?.textContent).toBe('Shutter');
  });

  it('takes two knocks for one tap, and notes nothing after the last pass until one goes back', () => {
    page.press('Done');
    for (const _ of card.rows) {
      wait(1000);
      page.press('Done');
      if (!text().includes('That was the last one')) {
        wait(200);
        page.press('Done');
      }
    }
    expect(runs().map(({ passId }) => passId)).toEqual(card.rows.map(({ passId }) => passId));
    expect(text()).toContain('That was the last one');
    for (const words of ['Done', 'Flat', 'Too dark', 'Count']) expect(() => page.button(words)).toThrow(/no button/);
    expect(page.button('Next').disabled).toBe(true);
    wait(1000);
    page.press('Back');
    expect(page.button('Done').disabled).toBe(false);
    // opened again, it is at the end still
    page.leave();
    page = mounted(<RunRoom card={card} />);
    expect(text()).toContain('That was the last one');
  });

  it('Shutter: the delay, then from the opening to the lamp and on to the closing, whatever the ticks did', () => {
    const [row] = card.rows;
    const frame = card.frames.find(({ rowNumbers }) => rowNumbers.includes(1));
    if (!row || !frame) throw new Error('no pass');
    page.press('Next');
    expect(text()).toContain(`delay ${frame.delaySeconds} s`);
    expect(text()).toMatch(/\d+ K · focus/);
    expect(text()).toContain(`Pass 1 of ${card.rows.length} · ${row.name}`);
    page.press('Shutter');
    wait(50);
    if (frame.delaySeconds > 0) expect(timer()).toContain('to opening');
    wait(frame.delaySeconds * 1000 + row.onSeconds * 1000 + 1500);
    expect(timer()).toMatch(/^1 lamp on/);
    // the page slept
    act(() => {
      vi.setSystemTime(Date.now() + 3_600_000);
      vi.advanceTimersByTime(60);
    });
    expect(timer()).toContain('closed');
    expect(page.button('Shutter').disabled).toBe(false);
  });

  it('what was done is not said any more once the next begins; while it is open, nothing says to open it', () => {
    const said = () => document.querySelector('[role="status"]')?.textContent;
    const frame = card.frames[0];
    if (!frame) throw new Error('no frame');
    expect(text()).toContain('Open the shutter. Keep all lamps off.');
    page.press('Shutter');
    wait(frame.delaySeconds * 1000 + 1000);
    expect(timer()).toContain('open');
    expect(text()).not.toContain('Open the shutter');
    expect(text()).toContain('Keep all lamps off.');
    page.press('Done');
    expect(said()).toBe('Done.');
    wait(1000);
    expect(said()).toBe('Done.');
    page.press('Shutter');
    wait(1000);
    expect(said()).toBe('');
    page.press('Stop');
    wait(1000);
    page.press('Too bright');
    expect(said()).not.toBe('');
    wait(1000);
    page.press('Count');
    wait(1000);
    expect(said()).toBe('');
    // what was done already is begun once more
    page.press('Stop');
    wait(1000);
    page.press('Back');
    expect(said()).toBe('Done tonight.');
    page.press('Shutter');
    wait(100);
    expect(said()).toBe('');
  });

  it('a word said while the shutter is open stands until the next lamp goes on', () => {
    page.leave();
    const setup = stoneSetup(
      passFrom('left', 9, 10, 1.2, { on: 1, off: 3 }),
      passFrom('right', 3, 10, 1.2, { on: 6, off: 8 }),
    );
    useApp.getState().startOn(setup);
    const two = cardOf(setup);
    page = mounted(<RunRoom card={two} />);
    page.press('Next');
    page.press('Shutter');
    wait((two.frames.find(({ rowNumbers }) => rowNumbers.includes(1))?.delaySeconds ?? 0) * 1000 + 3500);
    expect(timer()).toContain('lamp in');
    page.press('Flat');
    const said = () => document.querySelector('[role="status"]')?.textContent;
    expect(said()).not.toBe('');
    wait(1000);
    expect(said()).not.toBe('');
    wait(2000);
    expect(timer()).toContain('lamp on');
    expect(said()).toBe('');
  });
});

it('shows which of all ways tells the count, and takes another', () => {
  vi.stubGlobal('speechSynthesis', { cancel: () => undefined, speak: () => undefined });
  vi.stubGlobal('navigator', Object.assign(Object.create(navigator), { vibrate: () => true }));
  useApp.getState().startOn(stones);
  const page = mounted(<RunRoom card={card} />);
  const ways = () =>
    [...document.querySelectorAll('fieldset[aria-label="How the count is told"] button')].map((button) => [
      button.textContent,
      button.getAttribute('aria-pressed'),
    ]);
  expect(ways()).toEqual([
    ['Both', 'true'],
    ['Speaks', 'false'],
    ['Vibrates', 'false'],
    ['Silent', 'false'],
  ]);
  page.press('Vibrates');
  expect(ways().filter(([, isPressed]) => isPressed === 'true')).toEqual([['Vibrates', 'true']]);
  page.leave();
  vi.unstubAllGlobals();
});

it('warns of a danger at its pass, before the shutter, and says the walk there', () => {
  const setup = stoneSetup(passFrom('left', 9, 10, 1.2), passFrom('right', 3, 10, 1.2, { on: 4, off: 7 }));
  useApp.getState().startOn(setup);
  const page = mounted(<RunRoom card={cardOf(setup)} />);
  expect(text()).not.toContain('walked in time');
  page.press('Next');
  expect(text()).toMatch(/DANGER Can’t be walked in time/);
  expect(text()).toMatch(/Walk there: \d\d s · \d\d s too late/);
  const warning = document.querySelector('.run-cautions') as Element;
  const order = warning.compareDocumentPosition(page.button('Shutter'));
  expect(order & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy();
  page.leave();
});

describe('steps back', () => {
  const go = vi.fn();
  beforeEach(() => {
    go.mockClear();
    history.replaceState(null, '');
    vi.spyOn(history, 'back').mockImplementation(() => go(-1));
    vi.spyOn(history, 'go').mockImplementation(go);
    useNightRun.setState(useNightRun.getInitialState(), true);
  });
  watchNightPages();
  const back = (state: unknown) => window.dispatchEvent(Object.assign(new Event('popstate'), { state }));
  const shown = () => [useNightRun.getState().isOpen, useNightRun.getState().showsLog];

  it('the phone’s Back leads from the nights to the run, and from there to the plan', () => {
    openNightRun('#a');
    const run = history.state;
    openNights();
    expect(shown()).toEqual([true, true]);
    back(run);
    expect(shown()).toEqual([true, false]);
    back(null);
    expect(shown()).toEqual([false, false]);
  });

  it('stops a count first, and stays', () => {
    openNightRun('#a');
    const stop = vi.fn(() => useNightRun.setState({ stopCounting: null }));
    useNightRun.setState({ stopCounting: stop });
    back(null);
    expect(stop).toHaveBeenCalledOnce();
    expect(shown()).toEqual([true, false]);
    useNightRun.setState({ stopCounting: stop });
    stepBack();
    expect(stop).toHaveBeenCalledTimes(2);
    expect(go).not.toHaveBeenCalled();
    stepBack();
    expect(go).toHaveBeenCalledWith(-1);
  });

  it('Leave takes its steps out of the history', () => {
    openNightRun('#a');
    openNights();
    leaveNightRun();
    expect(shown()).toEqual([false, false]);
    expect(go).toHaveBeenCalledWith(-2);
  });
});
