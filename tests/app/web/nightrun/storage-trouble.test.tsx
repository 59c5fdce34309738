// @vitest-environment happy-dom
import { expect, it } from 'vitest';
import { App } from '../../../../app/web/App.tsx';
import { useNightRun } from '../../../../app/web/state/night-run.ts';
import { useSaving } from '../../../../app/web/state/page-saving.ts';
import { mounted } from './mounted.tsx';

it('trouble with keeping is said while a night is run, too, above all else', () => {
  useNightRun.setState({ isOpen: true });
  useSaving.getState().tell({ kind: 'problem', problem: 'full' });
  const page = mounted(<App />);
  expect(document.querySelector('[role="alert"]')?.textContent).toContain('storage is full');
  // the style of the page for the dark goes by this place
  expect(document.querySelector('.saving-news')).toBe(document.body.firstElementChild?.firstElementChild);
  page.leave();
});
