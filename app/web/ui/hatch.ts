import type { GroundPoint } from '../../../core/geometry/hull.ts';

/** A straight line from one place to another. */
export type Stroke = readonly [from: GroundPoint, to: GroundPoint];

/**
 * Parallel lines that fill a convex outline. Lines keep their places when the outline moves along them.
 *
 * @param turn direction of the lines in the outline's own axes, from the first toward the second, radians
 * @param spacing between lines, in the outline's unit
 */
export const hatchStrokes = (outline: readonly GroundPoint[], turn: number, spacing: number): Stroke[] => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  // in a frame turned with the lines: a along them, b across
  const turned = outline.map(([x, y]): GroundPoint => [x * c + y * s, y * c - x * s]);
  const across = turned.map(([, b]) => b);
  const [low, high] = [Math.min(...across), Math.max(...across)];
  const strokes: Stroke[] = [];
  for (let b = Math.ceil(low / spacing) * spacing; b < high; b += spacing) {
    const cuts = turned.flatMap((p, i): number[] => {
      const q = turned[(i + 1) % turned.length] as GroundPoint;
      return p[1] <= b !== q[1] <= b ? [p[0] + ((b - p[1]) / (q[1] - p[1])) * (q[0] - p[0])] : [];
    });
    if (cuts.length < 2) continue;
    const at = (a: number): GroundPoint => [a * c - b * s, a * s + b * c];
    strokes.push([at(Math.min(...cuts)), at(Math.max(...cuts))]);
  }
  return strokes;
};

/** The lines of `hatchStrokes` as one SVG path. */
export const hatchPath = (outline: readonly GroundPoint[], turn: number, spacing: number): string => {
  const text = ([x, y]: GroundPoint) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  return hatchStrokes(outline, turn, spacing)
    .map(([from, to]) => `M${text(from)}L${text(to)}`)
    .join('');
};
