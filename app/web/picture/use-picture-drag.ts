import { type PointerEvent as ReactPointerEvent, useRef } from 'react';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import { useApp } from '../state/app-store.ts';

/** Place in the picture of the pointer, for a drawing whose units are those of `size`. */
const placeOf = (
  svg: SVGSVGElement,
  [width, height]: readonly [number, number],
  event: { clientX: number; clientY: number },
): PicturePlace => {
  const matrix = svg.getScreenCTM();
  if (!matrix) return [0, 0];
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return [x / width, y / height];
};

interface DragHandlers {
  readonly onPointerDown: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerMove: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerUp: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerCancel: (event: ReactPointerEvent<SVGElement>) => void;
}

/**
 * Drags a thing over the picture as one entry of history; Escape, handled by the page, takes it back.
 *
 * @param at where the thing is now
 * @param move told where it should be; and where the pointer went down and is now, for what is drawn rather than moved
 */
export const usePictureDrag = (
  size: readonly [width: number, height: number],
  at: PicturePlace,
  move: (place: PicturePlace, pressed: PicturePlace, now: PicturePlace) => void,
): DragHandlers => {
  const grip = useRef<PicturePlace | null>(null);
  const pressed = useRef<PicturePlace>([0, 0]);
  const svgOf = (event: ReactPointerEvent<SVGElement>) => event.currentTarget.ownerSVGElement as SVGSVGElement;
  const end = (event: ReactPointerEvent<SVGElement>, keep: boolean) => {
    if (!grip.current) return;
    grip.current = null;
    event.currentTarget.releasePointerCapture(event.pointerId);
    const { commit, cancel } = useApp.getState();
    if (keep) commit();
    else cancel();
  };
  return {
    onPointerDown: (event) => {
      if (event.button !== 0) return;
      const [x, y] = placeOf(svgOf(event), size, event);
      grip.current = [at[0] - x, at[1] - y];
      pressed.current = [x, y];
      event.currentTarget.setPointerCapture(event.pointerId);
      event.stopPropagation();
      useApp.getState().begin();
    },
    onPointerMove: (event) => {
      if (!grip.current) return;
      // Escape took the drag back: what the pointer does after that is no longer part of it
      if (useApp.getState().history.gestureStart === null) return;
      const [x, y] = placeOf(svgOf(event), size, event);
      move([x + grip.current[0], y + grip.current[1]], pressed.current, [x, y]);
    },
    onPointerUp: (event) => end(event, true),
    onPointerCancel: (event) => end(event, false),
  };
};
