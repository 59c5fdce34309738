import { useState } from 'react';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { useScheme } from '../state/app-store.ts';
import { late } from '../ui/late.tsx';

export const ApproachRows = late(
  { name: 'The ways to light it' },
  async () => (await import('./ApproachRows.tsx')).ApproachRows,
);

/** What the present scheme comes nearest to: where its lamps are lit, and by whom. */
const presentWay = ({ frames }: Scheme): string => {
  const lit = frames.filter(({ passes }) => passes.length > 0);
  const isOne = frames.length === 1;
  const isDim = lit.every(({ seconds, passes }) =>
    passes.every(({ held, on, off }) => held === 'stand' && off - on >= seconds),
  );
  if (isOne) return isDim ? 'standing lights' : 'one frame';
  return lit.every(({ purpose }) => purpose === 'sky') ? 'in the sky frame' : 'painted frames';
};

/** How the lamps of the present scheme could be exposed, three ways, with what each would give before one is made. */
export const Approaches = () => {
  const scheme = useScheme();
  const [isOpen, setIsOpen] = useState(false);
  if (!scheme.frames.some(({ passes }) => passes.length > 0)) return null;
  return (
    <section className="approaches" aria-label="How to light it">
      <button type="button" className="unfold" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        How to light it: <strong>{presentWay(scheme)}</strong>
      </button>
      {isOpen && <ApproachRows />}
    </section>
  );
};
