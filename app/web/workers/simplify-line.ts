import type { Place } from './contours.ts';
import type { Line } from './marks-messages.ts';

/** Distance of a place from the straight piece between two others. */
const apart = ([x, y]: Place, [ax, ay]: Place, [bx, by]: Place): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const length2 = dx * dx + dy * dy;
  const t = length2 > 0 ? Math.min(Math.max(((x - ax) * dx + (y - ay) * dy) / length2, 0), 1) : 0;
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
};

/**
 * Leaves out points that a line does not need: none of those left out lies farther than `tolerance` from what stays
 * (Douglas and Peucker 1973). First and last points stay; a closed line, whose last point is its first, stays closed.
 */
export const simplifyLine = (points: readonly Place[], tolerance: number): Place[] => {
  const keeps = new Uint8Array(points.length);
  const ends = [0, points.length - 1] as const;
  for (const end of ends) keeps[end] = 1;
  const open: (readonly [number, number])[] = [ends];
  for (let span = open.pop(); span; span = open.pop()) {
    const [from, to] = span;
    let [farthest, most] = [-1, tolerance];
    for (let i = from + 1; i < to; i++) {
      const away = apart(points[i] as Place, points[from] as Place, points[to] as Place);
      if (away > most) [farthest, most] = [i, away];
    }
    if (farthest < 0) continue;
    keeps[farthest] = 1;
    open.push([from, farthest], [farthest, to]);
  }
  return points.filter((_, i) => keeps[i] === 1);
};

/** How far a drawn line may lie beside the true one, as a share of the picture: less than a pixel on a wide screen. */
const drawnTolerance = 0.0006;

/** A line for the screen, with four figures behind the point: a tenth of a pixel, and half the size in a message. */
export const drawnLine = (places: readonly Place[]): Line =>
  simplifyLine(places, drawnTolerance).flatMap((place) => place.map((v) => Math.round(v * 1e4) / 1e4));
