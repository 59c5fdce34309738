import { type ReactNode, useCallback, useEffect, useRef } from 'react';
import { roomForList } from './room-for-list.ts';

interface DropProps {
  readonly label: ReactNode;
  /** Classes of the whole, and of the list in it. */
  readonly className?: string;
  readonly listClass?: string;
  /** What the list is called, where it is a group. */
  readonly listLabel?: string;
  /** Whether a press on one of its buttons closes it. */
  readonly closesOnPress?: boolean;
  /** Whether the list keeps within what is seen of the page, over the button where need be; on a phone it is scrolled to. */
  readonly staysInside?: boolean;
  /** Told when it is opened or closed. */
  readonly onToggle?: (isOpen: boolean) => void;
  /** Told how to close it, where it does so later than on a press. */
  readonly children: ReactNode | ((close: () => void) => ReactNode);
}

/** A small button that opens a list under it. Escape, a press elsewhere, or going on by Tab closes it. */
export const Drop = ({
  label,
  className = 'drop',
  listClass = 'drop-list',
  listLabel,
  closesOnPress = false,
  staysInside = false,
  onToggle,
  children,
}: DropProps) => {
  const ref = useRef<HTMLDetailsElement>(null);
  const close = useCallback(() => {
    const drop = ref.current;
    if (!drop?.open) return;
    // what had the focus is hidden from now on
    if (drop.contains(document.activeElement)) drop.querySelector('summary')?.focus();
    drop.open = false;
  }, []);
  useEffect(() => {
    const onPointerDown = ({ target }: PointerEvent) => {
      if (!(target instanceof Node && ref.current?.contains(target))) close();
    };
    // before a room that keeps the press to itself
    document.addEventListener('pointerdown', onPointerDown, true);
    return () => document.removeEventListener('pointerdown', onPointerDown, true);
  }, [close]);
  return (
    <details
      className={className}
      ref={ref}
      onToggle={({ currentTarget }) => {
        onToggle?.(currentTarget.open);
        if (currentTarget.open && staysInside) roomForList(currentTarget);
        // near the lower edge the list would open out of sight
        if (currentTarget.open) currentTarget.lastElementChild?.scrollIntoView({ block: 'nearest' });
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !ref.current?.open) return;
        event.stopPropagation();
        close();
      }}
      onClick={(event) => {
        if (closesOnPress && event.target instanceof Element && event.target.closest('button')) close();
      }}
      onBlur={(event) => {
        if (event.relatedTarget && !event.currentTarget.contains(event.relatedTarget)) close();
      }}
    >
      <summary>{label}</summary>
      <div className={listClass} {...(listLabel === undefined ? {} : { role: 'group', 'aria-label': listLabel })}>
        {typeof children === 'function' ? children(close) : children}
      </div>
    </details>
  );
};
