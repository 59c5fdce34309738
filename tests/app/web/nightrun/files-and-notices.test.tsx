// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { act } from 'react';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NightRun } from '../../../../app/web/nightrun/NightRun.tsx';
import { useApp } from '../../../../app/web/state/app-store.ts';
import { mounted } from './mounted.tsx';

const sheets = ['ui/look.css', 'ui/notices.css', 'ui/phone.css', 'nightrun/night-run.css'];
const noticeOf = (parent: ParentNode) => parent.querySelector('.notice') as HTMLElement;
const dragged = (type: string, dataTransfer: { types: string[]; files: File[] }) => {
  const event = Object.assign(new Event(type, { bubbles: true, cancelable: true }), { dataTransfer });
  act(() => void document.documentElement.dispatchEvent(event));
  return event;
};
const told = () => useApp.getState().notice;

describe('the page for the dark', () => {
  let page: ReturnType<typeof mounted>;
  beforeEach(() => {
    document.head.innerHTML = sheets
      .map((name) => `<style>${readFileSync(`app/web/${name}`, 'utf8')}</style>`)
      .join('');
    useApp.getState().tell({ tone: 'problem', text: 'It was there before.' });
    page = mounted(<NightRun />);
  });
  afterEach(() => {
    page.leave();
    document.head.innerHTML = '';
    useApp.getState().tell(null);
  });

  it('a word that was there before stands in the flow, over nothing that is tapped', () => {
    expect(noticeOf(document).textContent).toContain('It was there before.');
    expect(getComputedStyle(noticeOf(document)).position).toBe('static');
    // on the plan the same word lies over the page
    document.body.insertAdjacentHTML('beforeend', '<main class="page"><div class="notice"></div></main>');
    expect(getComputedStyle(noticeOf(document.querySelector('.page') as Element)).position).toBe('fixed');
  });

  it('a file dropped on it is not opened, and the browser does not leave the page for it: why is said', () => {
    const before = useApp.getState().history.present;
    const drop = { types: ['Files'], files: [new File(['{'], 'broken.lampfall.json')] };
    expect(dragged('dragover', drop).defaultPrevented).toBe(true);
    expect(told()?.text).toBe('It was there before.');
    expect(dragged('drop', drop).defaultPrevented).toBe(true);
    expect(told()).toEqual({
      tone: 'problem',
      text: 'broken.lampfall.json was not opened. No files are taken during the run: leave it first.',
    });
    expect(document.querySelector('[role="alert"]')?.textContent).toContain('broken.lampfall.json was not opened');
    expect(useApp.getState().history.present).toBe(before);
  });

  it('words dragged into the notes are the browser’s', () => {
    expect(dragged('drop', { types: ['text/plain'], files: [] }).defaultPrevented).toBe(false);
    expect(told()?.text).toBe('It was there before.');
  });

  it('lets files be once it is left', () => {
    page.leave();
    expect(dragged('drop', { types: ['Files'], files: [new File([''], 'a')] }).defaultPrevented).toBe(false);
    page = mounted(<NightRun />);
  });
});
