import type { ReactNode } from 'react';
import { beginWith } from './begin-with.ts';

/** Where nothing is yet: what belongs there, in a sentence, and the press that begins it. */
export const Empty = ({ lacks, children }: { lacks: 'subject' | 'lamp'; children: ReactNode }) => (
  <p className="empty">
    <span>{children}</span>{' '}
    <button type="button" onClick={() => beginWith(lacks)}>
      {lacks === 'subject' ? 'Add a subject' : 'Add a lamp'}
    </button>
  </p>
);
