import type { RefObject } from 'react';

/** After the last pass: nothing more is noted from here. */
export const EndPage = ({ heading }: { heading: RefObject<HTMLHeadingElement | null> }) => (
  <section className="run-row" aria-label="The end">
    <h2 ref={heading} tabIndex={-1}>
      That was the last one.
    </h2>
    <p>Nothing more is noted. “Back” goes to it again.</p>
  </section>
);
