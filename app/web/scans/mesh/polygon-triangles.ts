/** Polygons of more corners are cut as fans even where they are not convex. */
const mostEarCorners = 32;

type Corner = readonly [number, number, number];

const cross = (a: Corner, b: Corner, c: Corner): [number, number, number] => {
  const [u, v] = [
    [b[0] - a[0], b[1] - a[1], b[2] - a[2]],
    [c[0] - a[0], c[1] - a[1], c[2] - a[2]],
  ] as [Corner, Corner];
  return [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
};

/** Corners seen along their common normal, turning counter-clockwise. */
const flatten = (corners: readonly Corner[]): (readonly [number, number])[] => {
  const normal: [number, number, number] = [0, 0, 0];
  const [first] = corners as [Corner];
  for (let i = 1; i + 1 < corners.length; i++)
    cross(first, corners[i] as Corner, corners[i + 1] as Corner).forEach((value, k) => {
      normal[k as 0 | 1 | 2] += value;
    });
  const axis = normal.map(Math.abs).reduce((most, value, k, all) => (value > (all[most] as number) ? k : most), 0);
  const [u, v] = [(axis + 1) % 3, (axis + 2) % 3] as [0 | 1 | 2, 0 | 1 | 2];
  const sign = (normal[axis] as number) < 0 ? -1 : 1;
  return corners.map((corner) => [corner[u] * sign, corner[v]]);
};

/** Twice the area to the left of a-b-c. */
const turn = (a: readonly [number, number], b: readonly [number, number], c: readonly [number, number]): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const fan = (count: number): number[] =>
  Array.from({ length: Math.max(count - 2, 0) }, (_, i) => [0, i + 1, i + 2]).flat();

/**
 * Cuts a polygon into triangles: a fan where it is convex, ears otherwise.
 *
 * @param corners in turn; a polygon that is not flat is cut as it looks along its mean normal
 * @returns three numbers of corners a triangle
 */
export const polygonTriangles = (corners: readonly Corner[]): number[] => {
  const count = corners.length;
  if (count <= 3 || count > mostEarCorners) return fan(count);
  const flat = flatten(corners);
  const at = (i: number) => flat[i] as readonly [number, number];
  const left = corners.map((_, i) => i);
  const turnAt = (k: number) => {
    const [a, b, c] = [-1, 0, 1].map((d) => left[(k + d + left.length) % left.length] as number) as [
      number,
      number,
      number,
    ];
    return { a, b, c, area: turn(at(a), at(b), at(c)) };
  };
  if (left.every((_, k) => turnAt(k).area >= 0)) return fan(count);
  const triangles: number[] = [];
  while (left.length > 3) {
    const ear = left.findIndex((_, k) => {
      const { a, b, c, area } = turnAt(k);
      const inside = (i: number) =>
        turn(at(a), at(b), at(i)) >= 0 && turn(at(b), at(c), at(i)) >= 0 && turn(at(c), at(a), at(i)) >= 0;
      return area > 0 && !left.some((i) => i !== a && i !== b && i !== c && inside(i));
    });
    const { a, b, c } = turnAt(Math.max(ear, 0));
    triangles.push(a, b, c);
    left.splice(Math.max(ear, 0), 1);
  }
  return [...triangles, ...left];
};
