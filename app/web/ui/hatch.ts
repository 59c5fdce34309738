import type { GroundPoint } from '../../../core/geometry/hull.ts';

/** A straight line from one place to another. */
export type Stroke = readonly [from: GroundPoint, to: GroundPoint];

type Span = readonly [from: number, to: number];

/** Spans along one line, those that meet made one. */
const joined = (spans: readonly Span[]): Span[] => {
  const result: [number, number][] = [];
  for (const [from, to] of [...spans].sort(([a], [b]) => a - b)) {
    const last = result.at(-1);
    if (last && from <= last[1]) last[1] = Math.max(last[1], to);
    else result.push([from, to]);
  }
  return result;
};

/**
 * Parallel lines that fill convex outlines together. Lines keep their places when the outlines move along them.
 *
 * @param turn direction of the lines in the outlines' own axes, from the first toward the second, radians
 * @param spacing between lines, in the outlines' unit
 */
export const hatchStrokes = (
  outlines: readonly (readonly GroundPoint[])[],
  turn: number,
  spacing: number,
): Stroke[] => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const spansOfLine = new Map<number, Span[]>();
  for (const outline of outlines) {
    // in a frame turned with the lines: a along them, b across
    const turned = outline.map(([x, y]): GroundPoint => [x * c + y * s, y * c - x * s]);
    const across = turned.map(([, b]) => b);
    const [low, high] = [Math.min(...across), Math.max(...across)];
    for (let line = Math.ceil(low / spacing); line * spacing < high; line++) {
      const b = line * spacing;
      const cuts = turned.flatMap((p, i): number[] => {
        const q = turned[(i + 1) % turned.length] as GroundPoint;
        return p[1] <= b !== q[1] <= b ? [p[0] + ((b - p[1]) / (q[1] - p[1])) * (q[0] - p[0])] : [];
      });
      if (cuts.length < 2) continue;
      const spans = spansOfLine.get(line) ?? [];
      spans.push([Math.min(...cuts), Math.max(...cuts)]);
      spansOfLine.set(line, spans);
    }
  }
  return [...spansOfLine].flatMap(([line, spans]) => {
    const b = line * spacing;
    const at = (a: number): GroundPoint => [a * c - b * s, a * s + b * c];
    return joined(spans).map(([from, to]): Stroke => [at(from), at(to)]);
  });
};

/** The lines of `hatchStrokes` as one SVG path. */
export const hatchPath = (outlines: readonly (readonly GroundPoint[])[], turn: number, spacing: number): string => {
  const text = ([x, y]: GroundPoint) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  return hatchStrokes(outlines, turn, spacing)
    .map(([from, to]) => `M${text(from)}L${text(to)}`)
    .join('');
};
