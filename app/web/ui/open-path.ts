import type { GroundPoint } from '../../../core/geometry/hull.ts';

/** SVG path through places, open; nothing for fewer than two. */
export const openPath = (places: readonly GroundPoint[]): string =>
  places.length < 2 ? '' : `M${places.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`;
