/** What to do first in a place of one's own. */
export const FirstThings = ({ lack }: { lack: 'subject' | 'lamp' }) => (
  <aside className="welcome" aria-label="First things">
    {lack === 'subject' ? (
      <p>
        An empty place. <em>Add what you measured:</em> under Subjects press Add, choose a hut, a wall, a stone …, and
        type its size. Then add a lamp, and night falls.
      </p>
    ) : (
      <p>
        Place the camera and what it looks at. Then <em>add a lamp</em>, and night falls.
      </p>
    )}
  </aside>
);
