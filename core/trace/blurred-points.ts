import type { SkyWay } from './sky-points.ts';
import type { Canvas } from './splat.ts';

/** Wider points are drawn into a coarse picture first, in which they are about as wide, in its pixels. */
const coarseSigma = 2.5;
/** Pixels of the coarse picture past each edge, so that there is something to read between there. */
const past = 1;

/**
 * Draws points of the sky into a picture. Points far out of focus cost as little as sharp ones: they are drawn into a
 * picture of fewer pixels, which is then read between its pixels in a straight line. Light is kept; at its middle a point
 * becomes about 3 % fainter.
 *
 * @param draw adds points to a canvas as luminance, along the way given with it
 */
export const addBlurred = (canvas: Canvas, way: SkyWay, draw: (canvas: Canvas, way: SkyWay) => void): void => {
  const { width, height, values } = canvas;
  const step = Math.floor(way.sigma / coarseSigma);
  if (step < 2) {
    draw(canvas, way);
    return;
  }
  const [columns, rows] = [Math.ceil(width / step) + 2 * past, Math.ceil(height / step) + 2 * past];
  const { view } = way.frame;
  const wider = {
    ...view,
    tanHalfWidth: (view.tanHalfWidth * columns * step) / width,
    tanHalfHeight: (view.tanHalfHeight * rows * step) / height,
  };
  const coarse: Canvas = { width: columns, height: rows, values: new Float32Array(3 * columns * rows) };
  const frame = { view: wider, width: columns, height: rows };
  draw(coarse, { ...way, frame, sigma: way.sigma / step });
  for (let y = 0; y < height; y++) {
    const down = (y + 0.5 - height / 2) / step + rows / 2 - 0.5;
    const r = Math.floor(down);
    for (let x = 0; x < width; x++) {
      const along = (x + 0.5 - width / 2) / step + columns / 2 - 0.5;
      const c = Math.floor(along);
      const [u, v] = [along - c, down - r];
      const upper = 3 * (r * columns + c);
      const lower = upper + 3 * columns;
      for (let k = 0; k < 3; k++) {
        const above = (coarse.values[upper + k] as number) * (1 - u) + (coarse.values[upper + 3 + k] as number) * u;
        const below = (coarse.values[lower + k] as number) * (1 - u) + (coarse.values[lower + 3 + k] as number) * u;
        const at = 3 * (y * width + x) + k;
        values[at] = (values[at] as number) + above * (1 - v) + below * v;
      }
    }
  }
};
