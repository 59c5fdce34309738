/** A point of a drawing: across and up (or north), metres. */
export type Point = readonly [across: number, up: number];
/** As the document holds points. */
export type DocumentPoint = [number, number];

/** To a centimetre; to a millimetre in what is smaller than two metres. */
export const roundedPoint = ([x, y]: Point, extentMetres: number): DocumentPoint => {
  const per = extentMetres < 2 ? 1000 : 100;
  return [Math.round(x * per) / per + 0, Math.round(y * per) / per + 0];
};

/** How large the points' box is, the longer side, metres. */
export const extentOf = (points: readonly Point[]): number => {
  const side = (axis: 0 | 1) => Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
  return Math.max(side(0), side(1), 0.01);
};

/** Halfway from a point to the next one; an open line is drawn on past its end. */
export const pointAfter = (points: readonly Point[], index: number, isClosed: boolean): DocumentPoint => {
  const at = points[index] as Point;
  const next = points[index + 1] ?? (isClosed ? points[0] : undefined);
  if (next) return [(at[0] + next[0]) / 2, (at[1] + next[1]) / 2];
  const before = points[index - 1] as Point;
  return [Math.max(at[0] + (at[0] - before[0]) / 2, 0), at[1] + (at[1] - before[1]) / 2];
};

/** How far an arrow key moves a point: a hundredth of the drawing's size, rounded to 1, 2, 5 … */
export const stepOf = (extentMetres: number): number =>
  [0.001, 0.005, 0.01, 0.05, 0.1, 0.5, 1].find((step) => step >= extentMetres / 100) ?? 1;
