import { convexHullOfMany, type GroundPoint } from '../geometry/hull.ts';

/**
 * What a part keeps a walker from: the hull, seen from above, of as much of it as lies between two heights. What is
 * lower is stepped over, what is higher is walked under.
 *
 * @param corners of its triangles, world axes, nine numbers a triangle
 * @returns [east, north], counter-clockwise; empty when nothing of it lies there
 */
export const footprintBetween = (corners: Float64Array, lowMetres: number, highMetres: number): GroundPoint[] => {
  const found: number[] = [];
  const cut = (a: number, b: number, height: number) => {
    const [up, nextUp] = [corners[a + 1] as number, corners[b + 1] as number];
    if (up < height === nextUp < height) return;
    const t = (height - up) / (nextUp - up);
    const at = (axis: 0 | 2) => (corners[a + axis] as number) * (1 - t) + (corners[b + axis] as number) * t;
    found.push(at(0), -at(2));
  };
  for (let i = 0; i < corners.length; i += 9) {
    for (let k = 0; k < 9; k += 3) {
      const [a, b] = [i + k, i + ((k + 3) % 9)];
      const up = corners[a + 1] as number;
      if (up >= lowMetres && up <= highMetres) found.push(corners[a] as number, -(corners[a + 2] as number));
      cut(a, b, lowMetres);
      cut(a, b, highMetres);
    }
  }
  return convexHullOfMany(Float64Array.from(found));
};

/** Lowest and highest corner, metres over the ground. */
export const heightsOf = (corners: Float64Array): readonly [number, number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 1; i < corners.length; i += 3) {
    low = Math.min(low, corners[i] as number);
    high = Math.max(high, corners[i] as number);
  }
  return [low, high];
};

/**
 * Height of the highest triangle over or under a place, not higher than a limit; -Infinity where there is none.
 *
 * @param corners as above
 */
export const surfaceAt = (corners: Float64Array, [east, north]: GroundPoint, limitMetres: number): number => {
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < corners.length; i += 9) {
    const [ax, az] = [(corners[i] as number) - east, (corners[i + 2] as number) + north];
    const [bx, bz] = [(corners[i + 3] as number) - east, (corners[i + 5] as number) + north];
    const [cx, cz] = [(corners[i + 6] as number) - east, (corners[i + 8] as number) + north];
    const [a, b, c] = [bx * cz - bz * cx, cx * az - cz * ax, ax * bz - az * bx];
    if (Math.min(a, b, c) < 0 && Math.max(a, b, c) > 0) continue;
    const sum = a + b + c;
    if (sum === 0) continue;
    const up = (a * (corners[i + 1] as number) + b * (corners[i + 4] as number) + c * (corners[i + 7] as number)) / sum;
    if (up <= limitMetres) highest = Math.max(highest, up);
  }
  return highest;
};
