import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { type DragHandlers, useSvgDrag } from '../picture/use-svg-drag.ts';
import { planHalf } from '../ui/plan-view.ts';
import { scrollWith } from './scroll-with.ts';

/** Held at the drawing's edge: beyond it the plan would shrink under the hand. */
const hold = (v: number) => Math.min(Math.max(v, -planHalf * 0.96), planHalf * 0.96);

/**
 * Drags a thing on the plan.
 *
 * @param at where the thing is on the drawing now
 * @param move told where it should be, and whether in steps (Shift)
 */
export const useDrag = (
  at: GroundPoint,
  move: (place: GroundPoint, inSteps: boolean) => void,
  onStart: () => void,
): DragHandlers => {
  const drag = useSvgDrag({
    at,
    onStart,
    move: ([x, y], _pressed, _now, inSteps) => move([hold(x), hold(y)], inSteps),
  });
  return {
    ...drag,
    onPointerMove: (event) => {
      const { currentTarget, pointerId } = event;
      if (currentTarget.ownerSVGElement && currentTarget.hasPointerCapture(pointerId))
        scrollWith(currentTarget.ownerSVGElement, event);
      drag.onPointerMove(event);
    },
  };
};
