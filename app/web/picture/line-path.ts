import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { openPath } from '../ui/open-path.ts';

/** SVG path through points given as x, y, x, y … in shares of a drawing. */
export const linePath = (line: readonly number[], [width, height]: readonly [number, number]): string =>
  openPath(
    Array.from(
      { length: Math.floor(line.length / 2) },
      (_, i): GroundPoint => [(line[2 * i] as number) * width, (line[2 * i + 1] as number) * height],
    ),
  );
