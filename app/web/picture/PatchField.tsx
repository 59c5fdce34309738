import { type PictureQuad, quadOfRectangle } from '../../../core/readings/patch-corners.ts';
import { usePictureDrag } from './use-picture-drag.ts';

/** A smaller drag is a press that slipped, as a share of the picture. */
const leastDrag = 0.01;

interface PatchFieldProps {
  readonly size: readonly [width: number, height: number];
  /** Told the rectangle that is drawn. */
  readonly onDraw: (quad: PictureQuad) => void;
}

/** The picture behind the patch: a drag on it draws the patch anew. */
export const PatchField = ({ size, onDraw }: PatchFieldProps) => {
  const drag = usePictureDrag(size, [0, 0], (_, [ax, ay], [bx, by]) => {
    if (Math.abs(bx - ax) < leastDrag || Math.abs(by - ay) < leastDrag) return;
    onDraw(quadOfRectangle(Math.min(ax, bx), Math.min(ay, by), Math.max(ax, bx), Math.max(ay, by)));
  });
  return <rect className="patch-field" width={size[0]} height={size[1]} aria-hidden="true" {...drag} />;
};
