import type { ReactNode } from 'react';

interface HintProps {
  readonly label: string;
  readonly className?: string;
  readonly children: ReactNode;
  readonly onPutAway: () => void;
}

/** A quiet word to a new user, at the place that it speaks of, until it is done or put away. */
export const Hint = ({ label, className = '', children, onPutAway }: HintProps) => (
  <aside className={`hint ${className}`.trim()} aria-label={label}>
    <p>{children}</p>
    <button type="button" className="small" onClick={onPutAway} aria-label={`Put away: ${label}`} title="Put away">
      <svg viewBox="0 0 14 14" width={14} height={14} aria-hidden="true">
        <path d="M3 3L11 11M11 3L3 11" />
      </svg>
    </button>
  </aside>
);
