import { Empty } from '../frames/Empty.tsx';

/** What to do first in a place of one's own. */
export const FirstThings = ({ lack }: { lack: 'subject' | 'lamp' }) => (
  <aside className="welcome" aria-label="First things">
    {lack === 'subject' ? (
      <Empty lacks="subject">
        An empty place. Add what you measured: a hut, a wall, a stone … and type its size. Then a lamp, and night falls.
      </Empty>
    ) : (
      <Empty lacks="lamp">Place the camera and what it looks at. Then add a lamp, and night falls.</Empty>
    )}
  </aside>
);
