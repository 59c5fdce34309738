import { type PointerEvent as ReactPointerEvent, useRef } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { useApp } from '../state/app-store.ts';
import { planHalf } from '../ui/plan-view.ts';

/** Drawing place of the pointer. */
export const placeOf = (svg: SVGSVGElement, event: { clientX: number; clientY: number }): GroundPoint => {
  const matrix = svg.getScreenCTM();
  if (!matrix) return [0, 0];
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix.inverse());
  return [x, y];
};

interface DragHandlers {
  readonly onPointerDown: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerMove: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerUp: (event: ReactPointerEvent<SVGElement>) => void;
  readonly onPointerCancel: (event: ReactPointerEvent<SVGElement>) => void;
}

/**
 * Drags a thing on the drawing as one entry of history; Escape, handled by the page, takes it back.
 *
 * @param at where the thing is on the drawing now
 * @param move told where it should be
 */
export const useDrag = (at: GroundPoint, move: (place: GroundPoint) => void, onStart: () => void): DragHandlers => {
  const grip = useRef<GroundPoint | null>(null);
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
      const svg = event.currentTarget.ownerSVGElement as SVGSVGElement;
      const [x, y] = placeOf(svg, event);
      grip.current = [at[0] - x, at[1] - y];
      event.currentTarget.setPointerCapture(event.pointerId);
      event.stopPropagation();
      onStart();
      useApp.getState().begin();
    },
    onPointerMove: (event) => {
      if (!grip.current) return;
      // Escape took the drag back: what the pointer does after that is no longer part of it
      if (useApp.getState().history.gestureStart === null) return;
      const [x, y] = placeOf(event.currentTarget.ownerSVGElement as SVGSVGElement, event);
      // held at the drawing's edge: beyond it the plan would shrink under the hand
      const hold = (v: number) => Math.min(Math.max(v, -planHalf * 0.96), planHalf * 0.96);
      move([hold(x + grip.current[0]), hold(y + grip.current[1])]);
    },
    onPointerUp: (event) => end(event, true),
    onPointerCancel: (event) => end(event, false),
  };
};
