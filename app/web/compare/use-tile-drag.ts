import { type PointerEvent, useEffect, useRef, useState } from 'react';

/** How far a press may slip before it is a drag, CSS pixels. */
const slipPixels = 6;

const tileUnder = ({ clientX, clientY }: PointerEvent): string | null =>
  document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('[data-scheme]')?.dataset['scheme'] ?? null;

/** A tile on its way, and the one over which it is. */
export interface TileDrag {
  readonly schemeId: string;
  readonly overId: string;
}

/**
 * Drags tiles by their heads with a mouse or pen; a finger scrolls. Escape leaves the tile where it was.
 *
 * @param onDrop told which tile was let go over which other
 */
export const useTileDrag = (onDrop: (schemeId: string, overId: string) => void) => {
  const [drag, setDrag] = useState<TileDrag | null>(null);
  const press = useRef<{ readonly schemeId: string; readonly x: number; readonly y: number } | null>(null);
  const end = () => {
    press.current = null;
    setDrag(null);
  };
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      press.current = null;
      setDrag(null);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
  const handlersOf = (schemeId: string) => ({
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0 || event.pointerType === 'touch') return;
      press.current = { schemeId, x: event.clientX, y: event.clientY };
    },
    onPointerMove: (event: PointerEvent) => {
      const { current } = press;
      if (!current) return;
      // let go outside the head, before the pointer was captured
      if (!(event.buttons & 1)) return end();
      if (!drag && Math.hypot(event.clientX - current.x, event.clientY - current.y) < slipPixels) return;
      // from here on it is no press any more: the click that would follow goes elsewhere
      if (!drag) event.currentTarget.setPointerCapture(event.pointerId);
      setDrag({ schemeId, overId: tileUnder(event) ?? schemeId });
    },
    onPointerUp: () => {
      if (drag && drag.overId !== schemeId) onDrop(schemeId, drag.overId);
      end();
    },
    onPointerCancel: end,
  });
  return { drag, handlersOf };
};
