import { type ReactNode, useRef } from 'react';

interface DropProps {
  readonly label: string;
  /** Whether a press on one of its buttons closes it. */
  readonly closesOnPress?: boolean;
  readonly children: ReactNode;
}

/** A small button that opens a list under it. Escape, or a press elsewhere, closes it. */
export const Drop = ({ label, closesOnPress = false, children }: DropProps) => {
  const ref = useRef<HTMLDetailsElement>(null);
  const close = () => ref.current?.removeAttribute('open');
  return (
    <details
      className="drop"
      ref={ref}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !ref.current?.open) return;
        event.stopPropagation();
        close();
        ref.current.querySelector('summary')?.focus();
      }}
      onClick={(event) => {
        if (closesOnPress && event.target instanceof HTMLElement && event.target.closest('button')) close();
      }}
      onBlur={(event) => {
        if (event.relatedTarget && !event.currentTarget.contains(event.relatedTarget)) close();
      }}
    >
      <summary>{label}</summary>
      <div className="drop-list">{children}</div>
    </details>
  );
};
