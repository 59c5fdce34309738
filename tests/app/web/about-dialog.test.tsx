// @vitest-environment happy-dom
import { act } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { SetupMenu } from '../../../app/web/library/SetupMenu.tsx';
import { useSession } from '../../../app/web/state/session.ts';
import { useModal } from '../../../app/web/ui/use-modal.ts';
import { mounted } from './nightrun/mounted.tsx';

vi.mock('../../../app/web/library/About.tsx', () => {
  throw new Error('its file is not there');
});

const label = 'About, changes, licences';

describe('what this page is', () => {
  afterEach(() => act(() => useSession.setState(useSession.getInitialState(), true)));

  it('can be put away where it does not load, and asked for again', async () => {
    const page = mounted(<SetupMenu />);
    for (let time = 1; time <= 2; time++) {
      page.press(label);
      await vi.waitFor(async () => {
        await act(async () => undefined);
        expect(document.querySelector('[role=alert]')).not.toBeNull();
      });
      expect(document.querySelector('[role=alert]')?.textContent).toContain('What this page is could not be loaded.');
      page.press('Close');
      expect(document.querySelector('[role=alert]')).toBeNull();
    }
    page.leave();
  });
});

const Dialog = ({ onClose }: { onClose: () => void }) => (
  <dialog ref={useModal()} onClose={onClose}>
    <button type="button" onClick={onClose}>
      Close
    </button>
  </dialog>
);

const Opener = () => {
  const isOpen = useSession((state) => state.showsAbout);
  const show = (showsAbout: boolean) => useSession.getState().set({ showsAbout });
  return (
    <>
      <button type="button" onClick={() => show(true)}>
        Open
      </button>
      {isOpen && <Dialog onClose={() => show(false)} />}
    </>
  );
};

describe('a dialog over the page', () => {
  it('gives the focus back to what opened it', () => {
    const page = mounted(<Opener />);
    page.press('Open');
    expect(document.querySelector('dialog')?.open).toBe(true);
    page.press('Close');
    expect(document.querySelector('dialog')).toBeNull();
    expect(document.activeElement).toBe(page.button('Open'));
    page.leave();
  });
});
