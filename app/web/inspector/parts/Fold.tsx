import { type ReactNode, useState } from 'react';

interface FoldProps {
  readonly title: string;
  /** A quiet word beside the title. */
  readonly note?: string;
  readonly startsOpen?: boolean;
  readonly children: ReactNode;
}

/** A heading that what is asked for seldom is folded away under. Nothing of it is drawn while it is closed. */
export const Fold = ({ title, note, startsOpen = false, children }: FoldProps) => {
  const [isOpen, setIsOpen] = useState(startsOpen);
  return (
    <details className="fold group" open={isOpen} onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>
        <h3>{title}</h3> {note && <span className="quiet">{note}</span>}
      </summary>
      {isOpen && <div className="fold-body">{children}</div>}
    </details>
  );
};
