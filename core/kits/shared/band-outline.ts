import type { Spot } from './interlace.ts';

const unit = ([ax, ay]: Spot, [bx, by]: Spot): Spot => {
  const length = Math.hypot(bx - ax, by - ay);
  return [(bx - ax) / length, (by - ay) / length];
};

/** Corners of a line rounded with arcs of a few chords. */
const rounded = (line: readonly Spot[], radius: number, chords: number): Spot[] =>
  line.flatMap((corner, i): Spot[] => {
    const [before, after] = [line[i - 1], line[i + 1]];
    if (!before || !after) return [corner];
    const [back, onward] = [unit(corner, before), unit(corner, after)];
    const cosine = back[0] * onward[0] + back[1] * onward[1];
    if (cosine < -1 + 1e-9) return [];
    // a quadratic curve that begins and ends as far from the corner as an arc of this radius would
    const reach = radius / Math.tan(Math.acos(cosine) / 2);
    return Array.from({ length: chords + 1 }, (_, k): Spot => {
      const t = k / chords;
      const [a, c] = [reach * (1 - t) ** 2, reach * t ** 2];
      return [corner[0] + a * back[0] + c * onward[0], corner[1] + a * back[1] + c * onward[1]];
    });
  });

/**
 * Outline of a band of even width along a line with rounded corners, shortened at both ends, counter-clockwise or
 * clockwise as the line turns.
 */
export const bandOutline = (
  line: readonly Spot[],
  widthMetres: number,
  shortMetres: number,
  bendMetres: number,
): [number, number][] => {
  const bent = rounded(line, bendMetres, 5);
  const path = bent.map((spot, i): Spot => {
    const inner = i === 0 ? bent[1] : i === bent.length - 1 ? bent[i - 1] : null;
    if (!inner) return spot;
    const [e, u] = unit(spot, inner);
    return [spot[0] + e * shortMetres, spot[1] + u * shortMetres];
  });
  const beside = (side: number): [number, number][] =>
    path.map((spot, i) => {
      const into = i > 0 ? unit(path[i - 1] as Spot, spot) : null;
      const out = i + 1 < path.length ? unit(spot, path[i + 1] as Spot) : null;
      const [a, b] = [(into ?? out) as Spot, (out ?? into) as Spot];
      const mean = unit([0, 0], [a[0] + b[0], a[1] + b[1]]);
      const stretch = (side * widthMetres) / 2 / (mean[0] * a[0] + mean[1] * a[1]);
      return [spot[0] - mean[1] * stretch, spot[1] + mean[0] * stretch];
    });
  return [...beside(-1), ...beside(1).reverse()];
};
