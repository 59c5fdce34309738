import { expect, it } from 'vitest';
import { useApp } from '../../../app/web/state/app-store.ts';
import { setupAtRest } from '../../../app/web/state/at-rest.ts';
import { setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';

it('setupAtRest is the very same through a drag, and the new one after it', () => {
  const iso = (value: number) =>
    useApp.getState().edit((s) => setFrameNumber(s, { schemeId: 'side', frameId: 'painted' }, 'iso', value));
  const rest = () => setupAtRest(useApp.getState());
  iso(500);
  const before = useApp.getState().history.present;
  expect(rest()).toBe(before);
  useApp.getState().begin();
  for (const value of [640, 800]) {
    iso(value);
    expect(useApp.getState().history.present).not.toBe(before);
    expect(rest()).toBe(before);
  }
  useApp.getState().commit();
  expect(rest()).toBe(useApp.getState().history.present);
  expect(rest()).not.toBe(before);
});
