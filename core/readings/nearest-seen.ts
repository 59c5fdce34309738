import { viewDirection } from '../camera/camera-view.ts';
import { dot } from '../geometry/vec.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import type { World } from '../world/world.ts';

/** The nearest point that the camera sees of something, along the lens's axis. */
export interface NearestSeen {
  /** null = the ground. */
  readonly subjectId: string | null;
  readonly name: string;
  readonly metres: number;
}

/** Looks across the picture; down it as many as its shape asks for. */
const columns = 48;

/** The nearest that is seen of the ground and of each subject, nearest first: to a cell of 48 across the picture. */
export const nearestSeen = ({ stage, view, aspect }: World): NearestSeen[] => {
  const rows = Math.max(Math.round(columns / aspect), 2);
  const nearest = new Map<number, number>();
  for (let y = 0; y < rows; y++)
    for (let x = 0; x < columns; x++) {
      // the picture's edges themselves are looked at: the nearest ground lies there
      const direction = viewDirection(view, x / (columns - 1), y / (rows - 1));
      const seen = surfaceAlong(stage, view.position, direction);
      if (!seen) continue;
      const depth = seen.distance * dot(direction, view.forward);
      nearest.set(seen.subject, Math.min(nearest.get(seen.subject) ?? Number.POSITIVE_INFINITY, depth));
    }
  return [...nearest]
    .map(([subject, metres]) => ({
      subjectId: stage.subjects[subject]?.id ?? null,
      name: stage.subjects[subject]?.name ?? 'Ground',
      metres,
    }))
    .sort((a, b) => a.metres - b.metres);
};
