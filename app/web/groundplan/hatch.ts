import type { GroundPoint } from '../../../core/geometry/hull.ts';

/**
 * Parallel lines that fill a convex outline, as an SVG path. Lines keep their places when the outline moves along them.
 *
 * @param turn direction of the lines on the drawing, radians
 * @param spacing between lines, in drawing units
 */
export const hatchPath = (outline: readonly GroundPoint[], turn: number, spacing: number): string => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  // in a frame turned with the lines: a along them, b across
  const turned = outline.map(([x, y]): GroundPoint => [x * c + y * s, y * c - x * s]);
  const across = turned.map(([, b]) => b);
  const [low, high] = [Math.min(...across), Math.max(...across)];
  let path = '';
  for (let b = Math.ceil(low / spacing) * spacing; b < high; b += spacing) {
    const cuts = turned.flatMap((p, i): number[] => {
      const q = turned[(i + 1) % turned.length] as GroundPoint;
      return p[1] <= b !== q[1] <= b ? [p[0] + ((b - p[1]) / (q[1] - p[1])) * (q[0] - p[0])] : [];
    });
    if (cuts.length < 2) continue;
    const [from, to] = [Math.min(...cuts), Math.max(...cuts)];
    const at = (a: number) => `${(a * c - b * s).toFixed(1)} ${(a * s + b * c).toFixed(1)}`;
    path += `M${at(from)}L${at(to)}`;
  }
  return path;
};
