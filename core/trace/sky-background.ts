import { viewDirection } from '../camera/camera-view.ts';
import type { Triple } from '../colour/matrix.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { PictureFrame } from './on-picture.ts';
import type { Canvas } from './splat.ts';

/** Most columns of places at which the smooth sky is worked out. */
const mostColumns = 320;

/**
 * Adds a smooth sky to a picture: worked out at places a few pixels apart and read between them in a straight line.
 *
 * @param luminanceAt linear RGB in cd/m^2 in a direction
 */
export const addBackground = (
  { width, height, values }: Canvas,
  { view }: PictureFrame,
  luminanceAt: (toward: Vec3) => Triple,
): void => {
  const step = Math.max(Math.ceil(width / mostColumns), 1);
  const [columns, rows] = [Math.ceil(width / step) + 1, Math.ceil(height / step) + 1];
  const nodes = new Float32Array(3 * columns * rows);
  for (let r = 0; r < rows; r++)
    for (let c = 0; c < columns; c++) {
      // with one place a pixel it lies in the pixel's middle
      const shift = step === 1 ? 0.5 : 0;
      const toward = viewDirection(view, (c * step + shift) / width, (r * step + shift) / height);
      nodes.set(luminanceAt(toward), 3 * (r * columns + c));
    }
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [fx, fy] = step === 1 ? [x, y] : [(x + 0.5) / step, (y + 0.5) / step];
      const [c, r] = [Math.floor(fx), Math.floor(fy)];
      const [u, v] = [fx - c, fy - r];
      const at = 3 * (r * columns + c);
      for (const k of [0, 1, 2]) {
        const upper = (nodes[at + k] as number) * (1 - u) + (nodes[at + 3 + k] as number) * u;
        const below = at + 3 * columns + k;
        const lower = v > 0 ? (nodes[below] as number) * (1 - u) + (nodes[below + 3] as number) * u : 0;
        const i = 3 * (y * width + x) + k;
        values[i] = (values[i] as number) + upper * (1 - v) + lower * v;
      }
    }
};
