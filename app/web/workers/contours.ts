import { contours } from 'd3-contour';

/** A place in shares of the picture. */
export type Place = readonly [x: number, y: number];

/** A point of a contour, and the two places that it lies between; null along the picture's own edge. */
export interface ContourPoint {
  readonly place: Place;
  readonly inside: Place | null;
  readonly outside: Place | null;
}

interface Mask {
  readonly columns: number;
  readonly rows: number;
  /** Whether a cell belongs to it, row by row from the top. */
  readonly has: (cell: number) => boolean;
}

/** Halvings by which a point is moved from between two cells to the very edge. */
const halvings = 4;

/** Rings around less than so many cells are specks: a blade of grass, a hole between two. */
const leastCells = 5;

const areaInCells = (ring: readonly (readonly number[])[]): number => {
  let twice = 0;
  for (let i = 1; i < ring.length; i++) {
    const [a, b] = [ring[i - 1], ring[i]] as [Place, Place];
    twice += a[0] * b[1] - a[1] * b[0];
  }
  return Math.abs(twice) / 2;
};

/** The cells on the two sides of a vertex that marching squares set half-way between their middles; null at the edge. */
const sidesOf = ([x, y]: Place, { columns, rows, has }: Mask): readonly [inside: Place, outside: Place] | null => {
  const isUpright = Number.isInteger(x);
  const [a, b]: [Place, Place] = isUpright
    ? [
        [x - 0.5, y],
        [x + 0.5, y],
      ]
    : [
        [x, y - 0.5],
        [x, y + 0.5],
      ];
  if (isUpright ? x <= 0 || x >= columns : y <= 0 || y >= rows) return null;
  return has(Math.floor(a[1]) * columns + Math.floor(a[0])) ? [a, b] : [b, a];
};

/**
 * Closed contours of a mask, holes included, by marching squares. Each point is then moved to where the thing itself
 * ends, so that the grid's steps do not show.
 *
 * @param isIn whether a place of the picture belongs to the thing; left out, points stay half-way between cells
 * @returns rings whose last point is their first
 */
export const contoursOf = (mask: Mask, isIn?: (place: Place) => boolean): ContourPoint[][] => {
  const { columns, rows } = mask;
  const values = Array.from({ length: columns * rows }, (_, cell) => (mask.has(cell) ? 1 : 0));
  const { coordinates } = contours().size([columns, rows]).smooth(false).contour(values, 0.5);
  const share = ([x, y]: Place): Place => [x / columns, y / rows];
  const pointAt = (vertex: Place): ContourPoint => {
    const sides = sidesOf(vertex, mask);
    if (!sides) return { place: share(vertex), inside: null, outside: null };
    let [inside, outside] = sides.map(share) as [Place, Place];
    for (let n = 0; isIn && n < halvings; n++) {
      const middle: Place = [(inside[0] + outside[0]) / 2, (inside[1] + outside[1]) / 2];
      if (isIn(middle)) inside = middle;
      else outside = middle;
    }
    return { place: [(inside[0] + outside[0]) / 2, (inside[1] + outside[1]) / 2], inside, outside };
  };
  return coordinates
    .flat()
    .filter((ring) => areaInCells(ring) >= leastCells)
    .map((ring) => {
      const points = ring.slice(1).map((vertex) => pointAt(vertex as unknown as Place));
      return [points.at(-1) as ContourPoint, ...points];
    });
};

/** The cell deepest inside a mask by steps along rows and columns, as a place; null for an empty mask. */
export const deepestPlace = ({ columns, rows, has }: Mask): Place | null => {
  const depth = new Int32Array(columns * rows);
  const at = (i: number, j: number) =>
    i < 0 || j < 0 || i >= columns || j >= rows ? 0 : (depth[j * columns + i] as number);
  let [best, deepest] = [-1, 0];
  for (let cell = 0; cell < depth.length; cell++) {
    const [i, j] = [cell % columns, Math.floor(cell / columns)];
    depth[cell] = has(cell) ? 1 + Math.min(at(i - 1, j), at(i, j - 1)) : 0;
  }
  for (let cell = depth.length - 1; cell >= 0; cell--) {
    const [i, j] = [cell % columns, Math.floor(cell / columns)];
    depth[cell] = Math.min(depth[cell] as number, 1 + Math.min(at(i + 1, j), at(i, j + 1)));
    if ((depth[cell] as number) > deepest) [best, deepest] = [cell, depth[cell] as number];
  }
  return best < 0 ? null : [((best % columns) + 0.5) / columns, (Math.floor(best / columns) + 0.5) / rows];
};
