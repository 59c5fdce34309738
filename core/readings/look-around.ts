import { viewDirection } from '../camera/camera-view.ts';
import { dot } from '../geometry/vec.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import type { World } from '../world/world.ts';

/** How far away along the lens's axis what the camera sees begins and ends, metres; null where it sees nothing of the kind. */
export interface VisibleRange {
  /** Nearest thing of any kind, the ground included. */
  readonly nearestMetres: number | null;
  /** Farthest point of a subject. */
  readonly farthestMetres: number | null;
}

/** Looks across the picture; down it as many as its shape asks for. */
const columns = 48;

/** Looks round the picture for the nearest and farthest thing. */
export const visibleRange = ({ stage, view, aspect }: World): VisibleRange => {
  const rows = Math.max(Math.round(columns / aspect), 1);
  let [nearest, farthest] = [Number.POSITIVE_INFINITY, 0];
  for (let y = 0; y < rows; y++)
    for (let x = 0; x < columns; x++) {
      // the picture's edges themselves are looked at: the nearest ground lies there
      const direction = viewDirection(view, x / (columns - 1), rows > 1 ? y / (rows - 1) : 0.5);
      const seen = surfaceAlong(stage, view.position, direction);
      if (!seen) continue;
      const depth = seen.distance * dot(direction, view.forward);
      nearest = Math.min(nearest, depth);
      if (seen.subject >= 0) farthest = Math.max(farthest, depth);
    }
  return {
    nearestMetres: Number.isFinite(nearest) ? nearest : null,
    farthestMetres: farthest > 0 ? farthest : null,
  };
};
