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
const halfChord = (radiusMetres: number, v: number): number => Math.sqrt(Math.max(radiusMetres ** 2 - v ** 2, 0));

/** A line across the disc along u, and half its length; both ends lie on the rim. */
export interface ChordLine {
  readonly v: number;
  readonly half: number;
  /** How far from its ends corners keep, metres: the rim between neighbouring lines is straight, and must not cut one off. */
  readonly margin: number;
}

/**
 * Lines across a disc in growing order of `v`, a step or less apart: closer toward both ends, so that from one to the
 * next the rim moves by no more than `rimStep` steps along u.
 */
export const chordLines = (radiusMetres: number, steps: number, rimStep: number): ChordLine[] => {
  const step = (2 * radiusMetres) / steps;
  const upper: ChordLine[] = [];
  let [v, half, margin] = [radiusMetres, 0, 0];
  while (v > step / 2) {
    upper.push({ v, half, margin });
    const wider = Math.min(half + rimStep * step, radiusMetres);
    v = Math.max(v - step, halfChord(radiusMetres, wider));
    margin = 0.4 * (halfChord(radiusMetres, v) - half);
    half = halfChord(radiusMetres, v);
  }
  const lower = upper.map((line) => ({ ...line, v: -line.v }));
  return [...lower, { v: 0, half: radiusMetres, margin }, ...upper.reverse()];
};

/**
 * Columns of corners over a disc: `stepV` from one to the next, `stepU` along each, every other one moved by half; each
 * ends on the rim.
 */
export const evenColumns = (radiusMetres: number, stepU: number, stepV: number): Column[] => {
  const steps = Math.max(Math.round((2 * radiusMetres) / stepV), 8);
  return chordLines(radiusMetres, steps, 1.5).map(({ v, half, margin }, i) => {
    if (half === 0) return { v, u: [0], keys: [0] };
    const shift = i % 2 === 0 ? 0 : 0.5;
    const u = [-half];
    const inner = half - Math.max(margin, 0.3 * stepU);
    for (let n = Math.ceil(-inner / stepU - shift); (n + shift) * stepU < inner; n++) u.push((n + shift) * stepU);
    u.push(half);
    return { v, u, keys: u };
  });
};
