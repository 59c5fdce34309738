import { type PointerEvent as ReactPointerEvent, useRef } from 'react';
import { useApp } from '../state/app-store.ts';

/** A place in a drawing's own units. */
export type DrawingPlace = readonly [x: number, y: number];

export interface DragHandlers {
  readonly onPointerDown: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerMove: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerUp: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerCancel: (event: ReactPointerEvent<SVGElement>) => void;
}

/** Place of the pointer on a drawing. */
export const pointerPlace = (svg: SVGSVGElement, event: { clientX: number; clientY: number }): DrawingPlace => {
  const matrix = svg.getScreenCTM();
  if (!matrix) return [0, 0];
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return [x, y];
};

interface Dragged {
  /** Where the thing is now. */
  readonly at: DrawingPlace;
  readonly onStart?: () => void;
  /**
   * Told where it should be; where the pointer went down and is now, for what is drawn rather than moved; and whether
   * Shift is held, for steps.
   */
  readonly move: (place: DrawingPlace, pressed: DrawingPlace, now: DrawingPlace, inSteps: boolean) => void;
}

/** Drags a thing on a drawing as one entry of history; Escape, handled by the page, takes it back. */
export const useSvgDrag = ({ at, onStart, move }: Dragged): DragHandlers => {
  const grip = useRef<{ readonly offset: DrawingPlace; readonly pressed: DrawingPlace } | null>(null);
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
      const pressed = pointerPlace(svgOf(event), event);
      grip.current = { offset: [at[0] - pressed[0], at[1] - pressed[1]], pressed };
      event.currentTarget.setPointerCapture(event.pointerId);
      event.stopPropagation();
      onStart?.();
      useApp.getState().begin();
    },
    onPointerMove: (event) => {
      if (!grip.current) return;
      // Escape took the drag back: what the pointer does after that is no longer part of it
      if (useApp.getState().history.gestureStart === null) return;
      const { offset, pressed } = grip.current;
      const now = pointerPlace(svgOf(event), event);
      move([now[0] + offset[0], now[1] + offset[1]], pressed, now, event.shiftKey);
    },
    onPointerUp: (event) => end(event, true),
    onPointerCancel: (event) => end(event, false),
  };
};
