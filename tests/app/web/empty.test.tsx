// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { Empty } from '../../../app/web/frames/Empty.tsx';
import { useSession } from '../../../app/web/state/session.ts';
import { mounted } from './nightrun/mounted.tsx';

describe('where nothing is yet', () => {
  it('one press leads to the list that begins it, from any room, and puts the focus there', async () => {
    useSession.getState().set({ room: 'sweep', phoneRoom: 'notes' });
    const page = mounted(
      <>
        <Empty lacks="lamp">No lamp.</Empty>
        <div className="add-lamp">
          <button type="button">Torch</button>
        </div>
        <Empty lacks="subject">Nothing stands here.</Empty>
        <details className="add-subject">
          <summary>Add</summary>
        </details>
      </>,
    );
    page.press('Add a lamp');
    expect(useSession.getState()).toMatchObject({ room: 'viewfinder', phoneRoom: 'lamps' });
    await expect.poll(() => document.activeElement?.textContent).toBe('Torch');
    page.press('Add a subject');
    expect(useSession.getState()).toMatchObject({ room: 'viewfinder', phoneRoom: 'subjects' });
    await expect.poll(() => document.querySelector('details')?.open).toBe(true);
    page.leave();
    useSession.setState(useSession.getInitialState(), true);
  });
});
