/** What to do in an empty place. */
export const FirstThings = () => (
  <aside className="welcome" aria-label="First things">
    <p>
      An empty place. <em>Add what you measured:</em> under Subjects press Add, choose a hut, a wall, a stone …, and
      type its size. Then <em>add a lamp</em>, and night falls.
    </p>
  </aside>
);
