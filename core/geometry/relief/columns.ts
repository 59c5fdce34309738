/** Corners of a sheet along one line of it, in growing order of `u`. */
export interface Column {
  readonly v: number;
  readonly u: readonly number[];
  /** What tells which corners of two neighbouring columns belong together; grows along the column. */
  readonly keys: readonly number[];
}

/**
 * Triangles between neighbouring columns, corners numbered through all columns one after the other. Every edge inside
 * is shared by two triangles, however many corners the columns have. Corners go counter-clockwise with v to the right
 * and u up.
 *
 * @param columns in growing order of `v`, each with at least one corner
 * @param keyShift what is added to the keys of a column, by `u`, before they are compared with those of the next
 */
export const zipColumns = (
  columns: readonly Column[],
  keyShift: (left: Column, right: Column) => (u: number) => number = () => () => 0,
): Uint32Array => {
  const triangles: number[] = [];
  let start = 0;
  for (let c = 0; c + 1 < columns.length; c++) {
    const [left, right] = [columns[c] as Column, columns[c + 1] as Column];
    const next = start + left.u.length;
    const shift = keyShift(left, right);
    const leftKeys = left.keys.map((key, i) => key + shift(left.u[i] as number));
    let [l, r] = [0, 0];
    while (l + 1 < left.u.length || r + 1 < right.u.length) {
      const climbsLeft =
        r + 1 >= right.u.length ||
        (l + 1 < left.u.length && (leftKeys[l + 1] as number) <= (right.keys[r + 1] as number));
      if (climbsLeft) triangles.push(start + l, next + r, start + ++l);
      else triangles.push(start + l, next + r, next + ++r);
    }
    start = next;
  }
  return Uint32Array.from(triangles);
};

/** Half the length of a chord of the disc, metres; nought at both ends of it. */
export const halfChord = (radiusMetres: number, v: number): number =>
  Math.sqrt(Math.max(radiusMetres ** 2 - v ** 2, 0));

/** Columns of corners over a disc: `stepV` from one to the next, `stepU` along each, every other line moved by half; each line ends on the rim. */
export const evenColumns = (radiusMetres: number, stepU: number, stepV: number): Column[] => {
  const count = Math.max(Math.round((2 * radiusMetres) / stepV), 8);
  return Array.from({ length: count + 1 }, (_, i) => {
    const v = -radiusMetres + (2 * radiusMetres * i) / count;
    const half = i === count ? 0 : halfChord(radiusMetres, v);
    if (half === 0) return { v, u: [0], keys: [0] };
    const shift = i % 2 === 0 ? 0 : 0.5;
    const u = [-half];
    for (let n = Math.ceil(-half / stepU - shift + 0.3); (n + shift + 0.3) * stepU < half; n++)
      u.push((n + shift) * stepU);
    u.push(half);
    return { v, u, keys: u };
  });
};
