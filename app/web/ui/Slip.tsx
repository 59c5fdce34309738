import type { ReactNode } from 'react';

interface SlipProps {
  /** What stands in the strip. */
  readonly head: ReactNode;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  /** Small buttons at the end of the strip. */
  readonly beside?: ReactNode;
  /** What it opens to. */
  readonly children: ReactNode;
}

/** A narrow strip that opens in place. */
export const Slip = ({ head, isOpen, onToggle, beside, children }: SlipProps) => (
  <li className={isOpen ? 'slip slip-open' : 'slip'}>
    <div className="slip-line">
      <button type="button" className="slip-head" aria-expanded={isOpen} onClick={onToggle}>
        {head}
      </button>
      {beside}
    </div>
    {isOpen && <div className="inspector">{children}</div>}
  </li>
);
