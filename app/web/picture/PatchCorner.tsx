import type { KeyboardEvent } from 'react';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import { arrowStep } from './patch-moves.ts';
import { usePictureDrag } from './use-picture-drag.ts';

interface PatchCornerProps {
  readonly number: number;
  readonly place: PicturePlace;
  readonly size: readonly [width: number, height: number];
  readonly pixel: number;
  /** `run` is set for steps by key: they belong together while the key is held. */
  readonly onMove: (place: PicturePlace, run?: string) => void;
}

/** A corner of the patch to take hold of. */
export const PatchCorner = ({ number, place, size, pixel, onMove }: PatchCornerProps) => {
  const within = (v: number) => Math.min(Math.max(v, 0), 1);
  const drag = usePictureDrag(size, place, ([x, y]) => onMove([within(x), within(y)]));
  const onKeyDown = (event: KeyboardEvent) => {
    const step = arrowStep(event);
    if (!step) return;
    event.preventDefault();
    onMove([within(place[0] + step[0]), within(place[1] + step[1])], `patch corner ${number}`);
  };
  const [x, y] = [place[0] * size[0], place[1] * size[1]];
  return (
    <g
      className="patch-corner"
      transform={`translate(${x} ${y}) scale(${pixel})`}
      role="button"
      tabIndex={0}
      aria-label={`Corner ${number} of the patch. Arrow keys move it.`}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <circle r={14} className="patch-target" />
      <rect x={-3.5} y={-3.5} width={7} height={7} />
    </g>
  );
};
