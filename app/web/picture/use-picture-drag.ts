import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import { type DragHandlers, type DrawingPlace, useSvgDrag } from './use-svg-drag.ts';

/**
 * Drags a thing over the picture.
 *
 * @param size of the drawing over it, in its own units; places are shares of it
 * @param at where the thing is now
 * @param move told where it should be; and where the pointer went down and is now
 */
export const usePictureDrag = (
  [width, height]: readonly [width: number, height: number],
  at: PicturePlace,
  move: (place: PicturePlace, pressed: PicturePlace, now: PicturePlace) => void,
): DragHandlers => {
  const share = ([x, y]: DrawingPlace): PicturePlace => [x / width, y / height];
  return useSvgDrag({
    at: [at[0] * width, at[1] * height],
    move: (place, pressed, now) => move(share(place), share(pressed), share(now)),
  });
};
