import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Stroke } from './hatch.ts';

type Span = readonly [from: number, to: number];

/** Which shares of a line lie inside a convex outline given counter-clockwise; null when none does. */
const insideSpan = ([from, to]: Stroke, outline: readonly GroundPoint[]): Span | null => {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  let [first, last] = [0, 1];
  for (let i = 0; i < outline.length; i++) {
    const a = outline[i] as GroundPoint;
    const b = outline[(i + 1) % outline.length] as GroundPoint;
    const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
    // over 0 on the inner side, and how fast it grows along the line
    const side = ex * (from[1] - a[1]) - ey * (from[0] - a[0]);
    const slope = ex * dy - ey * dx;
    if (slope === 0) {
      if (side <= 0) return null;
    } else if (slope > 0) first = Math.max(first, -side / slope);
    else last = Math.min(last, -side / slope);
    if (first >= last) return null;
  }
  return [first, last];
};

/** Shares of a line that are left when spans are taken away. */
const leftOver = (spans: readonly Span[]): Span[] => {
  const left: Span[] = [];
  let at = 0;
  for (const [from, to] of [...spans].sort(([a], [b]) => a - b)) {
    if (from > at) left.push([at, from]);
    at = Math.max(at, to);
  }
  if (at < 1) left.push([at, 1]);
  return left;
};

/** The lines round convex outlines taken together: of each its edges, less what lies inside another. */
export const edgesOfAll = (outlines: readonly (readonly GroundPoint[])[]): Stroke[] => {
  const areas = outlines.filter(({ length }) => length > 2);
  return areas.flatMap((outline) =>
    outline.flatMap((from, i): Stroke[] => {
      const to = outline[(i + 1) % outline.length] as GroundPoint;
      const covered = areas
        .map((other) => (other === outline ? null : insideSpan([from, to], other)))
        .filter((span) => span !== null);
      const at = (share: number): GroundPoint => [
        from[0] + share * (to[0] - from[0]),
        from[1] + share * (to[1] - from[1]),
      ];
      return leftOver(covered).map(([a, b]) => [at(a), at(b)]);
    }),
  );
};
