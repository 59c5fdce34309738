// @vitest-environment happy-dom
import { act } from 'react';
import { afterEach, expect, it } from 'vitest';
import { PhoneRooms } from '../../../app/web/PhoneRooms.tsx';
import { useApp } from '../../../app/web/state/app-store.ts';
import { useReports } from '../../../app/web/state/reports.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { mounted } from './nightrun/mounted.tsx';

afterEach(() => useReports.setState(useReports.getInitialState(), true));

it('counts the cautions beside their mark, where the word keeps its line; a screen reader hears both', () => {
  const { history, schemeId } = useApp.getState();
  const scheme = history.present.schemes.find(({ id }) => id === schemeId) as Scheme;
  const report = reportScheme(history.present, scheme);
  const [caution] = reportScheme(history.present, {
    ...scheme,
    frames: scheme.frames.map((frame) => ({ ...frame, iso: 102400 })),
  }).cautions;
  if (!caution) throw new Error('no caution');
  const page = mounted(<PhoneRooms />);
  const last = () => [...document.querySelectorAll('nav button')].at(-1) as HTMLButtonElement;
  const show = (count: number) =>
    act(() => useReports.setState({ byScheme: { [schemeId]: { ...report, cautions: Array(count).fill(caution) } } }));
  show(0);
  expect(last().textContent).toBe('Cautions');
  show(12);
  // what a screen reader reads is not said twice
  const read = [...last().childNodes].map((node) =>
    node instanceof Element && node.querySelector('[aria-hidden]') ? '' : node.textContent,
  );
  expect(read.join('')).toBe('Cautions · 12');
  expect(last().querySelector('.icon + .switch-count[aria-hidden]')?.textContent).toBe('12');
  expect(last().lastElementChild?.className).toBe('unseen');
  page.leave();
});
