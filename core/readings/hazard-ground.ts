import type { GroundPoint } from '../geometry/hull.ts';
import type { Hazard } from '../setup/schema/setup.ts';
import { type Footprint, footprintOf } from '../walk/walk.ts';

/** How far the sides of the figure that stands for a hazard's circle may cut into it, metres: far less than a walker keeps clear. */
const cutMetres = 0.05;

/** A hazard's circle as a figure with its corners on it. */
const hullOf = ({ position: [east, north], radiusMetres }: Hazard): GroundPoint[] => {
  const corners = Math.max(Math.ceil(Math.PI / Math.acos(Math.max(1 - cutMetres / radiusMetres, 0))), 12);
  return Array.from({ length: corners }, (_, k): GroundPoint => {
    const turn = (2 * Math.PI * k) / corners;
    return [east + radiusMetres * Math.cos(turn), north + radiusMetres * Math.sin(turn)];
  });
};

/** How far a place lies from a hazard's middle, metres. */
export const fromMiddle = ({ position }: Hazard, [east, north]: GroundPoint): number =>
  Math.hypot(east - position[0], north - position[1]);

/** What a walker keeps off: the hazards that neither end of a way lies in. */
export const hazardFootprints = (hazards: readonly Hazard[], ends: readonly GroundPoint[]): Footprint[] =>
  hazards
    .filter((hazard) => ends.every((end) => fromMiddle(hazard, end) >= hazard.radiusMetres))
    .map((hazard) => footprintOf(hullOf(hazard)));

/** Least distance of a hazard's middle from a line from place to place, metres. */
const leastFromMiddle = (hazard: Hazard, a: GroundPoint, b: GroundPoint): number => {
  const [east, north] = [b[0] - a[0], b[1] - a[1]];
  const square = east ** 2 + north ** 2;
  const along = square > 0 ? ((hazard.position[0] - a[0]) * east + (hazard.position[1] - a[1]) * north) / square : 0;
  const t = Math.min(Math.max(along, 0), 1);
  return fromMiddle(hazard, [a[0] + t * east, a[1] + t * north]);
};

/** How near a way comes to a hazard's middle, metres. */
export const nearestOnWay = (hazard: Hazard, points: readonly GroundPoint[]): number =>
  points.reduce(
    (least, point, i) => Math.min(least, leastFromMiddle(hazard, points[Math.max(i - 1, 0)] as GroundPoint, point)),
    Number.POSITIVE_INFINITY,
  );

/** The hazards that a way leads through, by more than the figure that stands for them cuts into their circle. */
export const hazardsOn = (hazards: readonly Hazard[], points: readonly GroundPoint[]): Hazard[] =>
  hazards.filter((hazard) => nearestOnWay(hazard, points) < hazard.radiusMetres - cutMetres);
