import { linearFromByte } from '../../../../core/scan/mesh-colours.ts';
import type { Picture } from '../scan-tools.ts';
import type { SurfacePicture, Wrap } from './surface.ts';

/** Most parts of a triangle's side; its square is the number of places looked at. */
const mostParts = 8;

const wrapped = (at: number, wrap: Wrap): number => {
  if (wrap === 'clamp') return Math.min(Math.max(at, 0), 1);
  if (wrap === 'repeat') return at - Math.floor(at);
  const within = at - 2 * Math.floor(at / 2);
  return within > 1 ? 2 - within : within;
};

/** Middles of the small triangles that a triangle is cut into: shares of its second and third corner. */
const middles: readonly (readonly (readonly [number, number])[])[] = Array.from(
  { length: mostParts + 1 },
  (_, parts) => {
    const found: [number, number][] = [];
    for (let i = 0; i < parts; i++)
      for (let j = 0; i + j < parts; j++) {
        found.push([(i + 1 / 3) / parts, (j + 1 / 3) / parts]);
        if (i + j < parts - 1) found.push([(i + 2 / 3) / parts, (j + 2 / 3) / parts]);
      }
    return found;
  },
);

/**
 * Mean light of a picture over triangles: the triangle is cut into 4 to 64 equal ones, about one for every four pixels,
 * and the pixel under the middle of each counts, unless it is wholly clear.
 *
 * @param places two numbers a corner, (0, 0) = the picture's top left, (1, 1) = its bottom right
 * @param put takes the number of a triangle and its linear light
 */
export const samplePicture = (
  { width, height, rgba }: Picture,
  { wrap, onPicture }: SurfacePicture,
  places: Float32Array,
  indices: Uint32Array,
  put: (triangle: number, red: number, green: number, blue: number) => void,
): void => {
  const [a, b, c, d, e, f] = onPicture;
  const u = (corner: number) => a * (places[corner * 2] as number) + b * (places[corner * 2 + 1] as number) + c;
  const v = (corner: number) => d * (places[corner * 2] as number) + e * (places[corner * 2 + 1] as number) + f;
  for (let t = 0; t < indices.length; t += 3) {
    const [i, j, k] = [indices[t] as number, indices[t + 1] as number, indices[t + 2] as number];
    const [u0, v0] = [u(i), v(i)];
    const [u1, v1, u2, v2] = [u(j) - u0, v(j) - v0, u(k) - u0, v(k) - v0];
    const pixels = (Math.abs(u1 * v2 - u2 * v1) / 2) * width * height;
    const parts = Math.min(Math.max(Math.ceil(Math.sqrt(pixels) / 2), 2), mostParts) || 2;
    const looked = middles[parts] as readonly (readonly [number, number])[];
    let [red, green, blue, seen] = [0, 0, 0, 0];
    for (let m = 0; m < looked.length; m++) {
      const [second, third] = looked[m] as readonly [number, number];
      const x = wrapped(u0 + u1 * second + u2 * third, wrap[0]) * width;
      const y = wrapped(v0 + v1 * second + v2 * third, wrap[1]) * height;
      // a place that is no number lands on the first pixel
      const at = 4 * ((Math.min(Math.floor(y), height - 1) | 0) * width + (Math.min(Math.floor(x), width - 1) | 0));
      // a pixel that is wholly clear has lost its colour
      if (rgba[at + 3] === 0) continue;
      seen++;
      red += linearFromByte[rgba[at] as number] as number;
      green += linearFromByte[rgba[at + 1] as number] as number;
      blue += linearFromByte[rgba[at + 2] as number] as number;
    }
    put(t / 3, red / Math.max(seen, 1), green / Math.max(seen, 1), blue / Math.max(seen, 1));
  }
};
