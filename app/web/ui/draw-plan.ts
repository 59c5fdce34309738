import type { PlanShape } from './plan-pen.ts';
import { planHalf } from './plan-view.ts';

/** The page's typeface, as `look.css` has it. */
const typeface = '"Atkinson Hyperlegible Next Variable", system-ui, sans-serif';

/**
 * Draws a small plan into a square of a canvas, cut off at its edges.
 *
 * @param x left edge, in the canvas's present units
 * @param y top edge
 * @param size side of the square
 */
export const drawPlan = (
  ctx: CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D,
  shapes: readonly PlanShape[],
  x: number,
  y: number,
  size: number,
): void => {
  ctx.save();
  ctx.beginPath();
  ctx.rect(x, y, size, size);
  ctx.clip();
  ctx.translate(x + size / 2, y + size / 2);
  ctx.scale(size / (2 * planHalf), size / (2 * planHalf));
  for (const shape of shapes) {
    if ('text' in shape) {
      ctx.globalAlpha = 1;
      ctx.font = `${shape.isStrong ? 650 : 400} ${shape.size}px ${typeface}`;
      ctx.textAlign = shape.anchor === 'middle' ? 'center' : 'left';
      ctx.textBaseline = 'alphabetic';
      ctx.fillStyle = shape.colour;
      ctx.fillText(shape.text, shape.x, shape.y);
      continue;
    }
    const path = new Path2D(shape.path);
    ctx.globalAlpha = shape.opacity;
    if (shape.fill) {
      ctx.fillStyle = shape.fill;
      ctx.fill(path);
    }
    if (!shape.stroke) continue;
    ctx.strokeStyle = shape.stroke;
    ctx.lineWidth = shape.width;
    ctx.setLineDash([...shape.dash]);
    ctx.stroke(path);
  }
  ctx.restore();
};
