import { type RefObject, useEffect, useRef } from 'react';

/** The last event of the pointer, before anything else in the page has heard of it. */
export const usePointer = (): RefObject<PointerEvent | null> => {
  const last = useRef<PointerEvent | null>(null);
  useEffect(() => {
    const onPointer = (event: PointerEvent) => {
      last.current = event;
    };
    const names = ['pointerdown', 'pointermove'] as const;
    for (const name of names) window.addEventListener(name, onPointer, true);
    return () => {
      for (const name of names) window.removeEventListener(name, onPointer, true);
    };
  }, []);
  return last;
};
