import type { Curve } from './page/curves.ts';

/** A sample’s time at each size of one thing, and by how much each step multiplies it. */
export const curveLines = ({ of, points }: Curve): string =>
  `a sample by ${of}: ${points
    .map(([at, ms], i) => {
      const before = points[i - 1]?.[1];
      return `${at.toLocaleString('en')} ${ms.toFixed(1)} ms${before ? ` (${(ms / before).toFixed(2)} ×)` : ''}`;
    })
    .join(', ')}`;
