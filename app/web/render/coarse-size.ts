import type { Size } from './layer-store.ts';

/** The full size, halved until one sample is within so many texels, at most three times. */
export const coarseSize = (full: Size, mostTexels: number): Size => {
  let { width, height } = full;
  for (let halvings = 0; halvings < 3 && width * height > mostTexels; halvings++)
    [width, height] = [Math.ceil(width / 2), Math.ceil(height / 2)];
  return { width, height };
};
