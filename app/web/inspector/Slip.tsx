import type { ReactNode } from 'react';

interface SlipProps {
  /** What stands in the strip. */
  readonly head: ReactNode;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  /** What it opens to. */
  readonly children: ReactNode;
}

/** A narrow strip that opens in place. */
export const Slip = ({ head, isOpen, onToggle, children }: SlipProps) => (
  <li className={isOpen ? 'slip slip-open' : 'slip'}>
    <button type="button" className="slip-head" aria-expanded={isOpen} onClick={onToggle}>
      {head}
    </button>
    {isOpen && <div className="inspector">{children}</div>}
  </li>
);
