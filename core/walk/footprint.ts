import { convexHullOfMany, type GroundPoint } from '../geometry/hull.ts';
import { weldCorners } from '../geometry/weld.ts';

/** Places nearer than this are one, metres: what hangs together there is one thing to walk round. */
const weldMetres = 1e-4;

/** What of a part's triangles lies between two heights: the corners of each piece, three numbers each. */
interface Slice {
  readonly places: number[];
  /** Where the places of each triangle begin. */
  readonly begins: number[];
}

const sliceBetween = (corners: Float64Array, lowMetres: number, highMetres: number): Slice => {
  const places: number[] = [];
  const begins: number[] = [];
  const cut = (a: number, b: number, height: number) => {
    const isUpward = (corners[a + 1] as number) < (corners[b + 1] as number);
    // always from the lower end, so that triangles that share the edge find the very same place
    const [from, to] = isUpward ? [a, b] : [b, a];
    const [low, high] = [corners[from + 1] as number, corners[to + 1] as number];
    if (low < height === high < height) return;
    const t = (height - low) / (high - low);
    const at = (axis: 0 | 2) => (corners[from + axis] as number) * (1 - t) + (corners[to + axis] as number) * t;
    places.push(at(0), height, at(2));
  };
  for (let i = 0; i < corners.length; i += 9) {
    begins.push(places.length / 3);
    for (let k = 0; k < 9; k += 3) {
      const a = i + k;
      const up = corners[a + 1] as number;
      if (up >= lowMetres && up <= highMetres) places.push(corners[a] as number, up, corners[a + 2] as number);
      const b = i + ((k + 3) % 9);
      cut(a, b, lowMetres);
      cut(a, b, highMetres);
    }
  }
  return { places, begins };
};

/**
 * What a part keeps a walker from: seen from above, the hull of each piece of it that hangs together between two heights.
 * What is lower is stepped over, what is higher is walked under; the two sides of a doorway, or the legs of an arch, are
 * two pieces.
 *
 * @param corners of its triangles, world axes, nine numbers a triangle
 * @returns [east, north], counter-clockwise each; none when nothing of it lies there
 */
export const footprintsOfPart = (corners: Float64Array, lowMetres: number, highMetres: number): GroundPoint[][] => {
  const { places, begins } = sliceBetween(corners, lowMetres, highMetres);
  const { groupOfCorner, groupCount } = weldCorners(Float64Array.from(places), weldMetres);
  const piece = Int32Array.from({ length: groupCount }, (_, group) => group);
  const rootOf = (group: number): number => {
    let root = group;
    while (piece[root] !== root) {
      piece[root] = piece[piece[root] as number] as number;
      root = piece[root] as number;
    }
    return root;
  };
  begins.forEach((begin, triangle) => {
    for (let p = begin + 1; p < (begins[triangle + 1] ?? groupOfCorner.length); p++)
      piece[rootOf(groupOfCorner[p] as number)] = rootOf(groupOfCorner[begin] as number);
  });
  const pieces = new Map<number, number[]>();
  groupOfCorner.forEach((group, p) => {
    const root = rootOf(group);
    const own = pieces.get(root) ?? [];
    pieces.set(root, own);
    own.push(places[p * 3] as number, -(places[p * 3 + 2] as number));
  });
  return [...pieces.values()].map((own) => convexHullOfMany(Float64Array.from(own)));
};

/** Least x, y and z of corners, then the most of each, metres. */
export const boundsOf = (corners: Float64Array): [number, number, number, number, number, number] => {
  const least = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const most = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < corners.length; i++) {
    const value = corners[i] as number;
    const axis = i % 3;
    if (value < (least[axis] as number)) least[axis] = value;
    if (value > (most[axis] as number)) most[axis] = value;
  }
  return [...least, ...most] as [number, number, number, number, number, number];
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
