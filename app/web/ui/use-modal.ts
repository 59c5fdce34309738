import { type RefObject, useEffect, useRef } from 'react';

/**
 * A dialog that is open over the page as long as it is drawn. Once it is gone, what had the focus before has it again: a
 * browser gives it back only to a dialog that closes itself.
 */
export const useModal = (): RefObject<HTMLDialogElement | null> => {
  const dialog = useRef<HTMLDialogElement>(null);
  const before = useRef<Element | null>(null);
  useEffect(() => {
    before.current ??= document.activeElement;
    dialog.current?.showModal();
    return () => {
      const { current } = before;
      if (current instanceof HTMLElement && current.isConnected && !dialog.current?.isConnected) current.focus();
    };
  }, []);
  return dialog;
};
