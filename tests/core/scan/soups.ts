import { seededRandom } from '../../../core/geometry/random.ts';
import type { ScanTriangles } from '../../../core/scan/scan-code.ts';

/**
 * Triangles anywhere in a box, each with its own number as its colour, so that they are known again in another order.
 * The corners of the first reach the box's ends.
 */
export const numberedSoup = (count: number, size: readonly [number, number, number], seed: number): ScanTriangles => {
  const random = seededRandom(seed);
  const [width, height, depth] = size;
  const positions = new Float64Array(count * 9);
  for (let i = 0; i < positions.length; i += 3) {
    positions[i] = (random() - 0.5) * width;
    positions[i + 1] = random() * height;
    positions[i + 2] = (random() - 0.5) * depth;
  }
  positions.set([-width / 2, 0, -depth / 2, width / 2, height, depth / 2]);
  const colours = new Uint8Array(count * 3);
  for (let t = 0; t < count; t++) colours.set([t >> 16, (t >> 8) & 255, t & 255], t * 3);
  return { positions, indices: Uint32Array.from({ length: count * 3 }, (_, i) => i), colours };
};

/** Uneven ground of about so many triangles, 6 m wide, with colours. */
export const unevenGround = (triangles: number, seed: number): ScanTriangles & { readonly colours: Uint8Array } => {
  const random = seededRandom(seed);
  const cells = Math.floor(Math.sqrt(triangles / 2));
  const positions: number[] = [];
  for (let j = 0; j <= cells; j++)
    for (let i = 0; i <= cells; i++) {
      const [x, z] = [(i / cells - 0.5) * 6, (j / cells - 0.5) * 6];
      positions.push(x, 0.5 + 0.4 * Math.sin(3 * x) * Math.cos(2 * z) + 0.01 * random(), z);
    }
  const indices: number[] = [];
  for (let j = 0; j < cells; j++)
    for (let i = 0; i < cells; i++) {
      const [a, b] = [j * (cells + 1) + i, (j + 1) * (cells + 1) + i];
      indices.push(a, b, a + 1, a + 1, b, b + 1);
    }
  const colours = Uint8Array.from(indices, () => 60 + Math.floor(random() * 120));
  return { positions: Float64Array.from(positions), indices: Uint32Array.from(indices), colours };
};
