/** Numbers of a mesh that do not hang on the order of its triangles and corners. */
export interface Measures {
  readonly triangles: number;
  readonly area: number;
  /** Middle of the surface, each triangle counted by its area. */
  readonly middle: readonly number[];
  /** Sum over triangles of the signed volume from the origin; its sign tells the sense of turning. */
  readonly volume: number;
  readonly low: readonly number[];
  readonly high: readonly number[];
}

type Corner = readonly [number, number, number];

/** Measures triangles given corner by corner; those without area (under a 1e-12 of the longest edge's square) are left out. */
export const measureTriangles = (corners: Iterable<readonly [Corner, Corner, Corner]>): Measures => {
  let [triangles, area, volume] = [0, 0, 0];
  const middle = [0, 0, 0];
  const [low, high] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ];
  for (const [a, b, c] of corners) {
    const edge = (to: Corner) => [to[0] - a[0], to[1] - a[1], to[2] - a[2]] as const;
    const [u, v] = [edge(b), edge(c)];
    const cross = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]] as const;
    const own = Math.hypot(...cross) / 2;
    if (own <= 1e-12 * Math.max(Math.hypot(...u), Math.hypot(...v)) ** 2) continue;
    triangles++;
    area += own;
    volume += (cross[0] * a[0] + cross[1] * a[1] + cross[2] * a[2]) / 6;
    for (const k of [0, 1, 2] as const) {
      middle[k] = (middle[k] ?? 0) + (own * (a[k] + b[k] + c[k])) / 3;
      low[k] = Math.min(low[k] ?? 0, a[k], b[k], c[k]);
      high[k] = Math.max(high[k] ?? 0, a[k], b[k], c[k]);
    }
  }
  return { triangles, area, volume, middle: middle.map((sum) => sum / area), low, high };
};

/** Measures a mesh with shared corners. */
export const measureMesh = ({ positions, indices }: { positions: Float64Array; indices: Uint32Array }): Measures => {
  const corner = (i: number) =>
    [0, 1, 2].map((k) => positions[(indices[i] ?? 0) * 3 + k] ?? Number.NaN) as unknown as Corner;
  return measureTriangles(
    Array.from(
      { length: indices.length / 3 },
      (_, t) => [corner(t * 3), corner(t * 3 + 1), corner(t * 3 + 2)] as const,
    ),
  );
};

/** Largest difference between two measures as a share of the box's diagonal, its square or its cube. */
export const apart = (a: Measures, b: Measures): number => {
  const size = Math.hypot(...a.high.map((value, k) => value - (a.low[k] ?? 0)));
  const differences = [
    Math.abs(a.area - b.area) / size ** 2,
    // the origin may lie outside, so the volume is taken in proportion to what it sums
    Math.abs(a.volume - b.volume) / (size ** 2 * Math.max(size, Math.hypot(...a.high))),
    ...[a.middle, a.low, a.high].flatMap((list, n) =>
      list.map((value, k) => Math.abs(value - ([b.middle, b.low, b.high][n]?.[k] ?? Infinity)) / size),
    ),
  ];
  return Math.max(...differences);
};
