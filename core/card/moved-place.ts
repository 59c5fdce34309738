import { forEachHit } from '../geometry/cast-ray.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import type { Pass, Position } from '../setup/schema/setup.ts';
import type { Stage } from '../world/stage.ts';
import { heightOverGround } from './card-stand.ts';
import { movedOnLevel } from './moved-level.ts';
import type { Moved } from './stop-rule-steps.ts';

interface Surface {
  readonly up: number;
  readonly facesUp: boolean;
  readonly isSolid: boolean;
  readonly subject: number;
}

/** Above the highest place of a document, metres. */
const skyMetres = 5000;
/** Surfaces nearer to each other than this are one that was met at an edge of two triangles, metres. */
const sameMetres = 1e-6;

/** What lies over each other at a place, the highest first. */
const surfacesAt = ({ tree, isSolidTriangle, subjectOfTriangle }: Stage, [east, north]: GroundPoint): Surface[] => {
  const met: Surface[] = [];
  forEachHit(tree, [east, skyMetres, -north], [0, -1, 0], (triangle, t) => {
    const corner = (i: number) => tree.corners[triangle * 9 + i] as number;
    const [ax, az, bx, bz, cx, cz] = [corner(0), corner(2), corner(3), corner(5), corner(6), corner(8)];
    met.push({
      up: skyMetres - t,
      // the y of (b - a) × (c - a)
      facesUp: (bz - az) * (cx - ax) - (bx - ax) * (cz - az) > 0,
      isSolid: isSolidTriangle[triangle] === 1,
      subject: subjectOfTriangle[triangle] as number,
    });
  });
  const isAgain = (a: Surface, b: Surface) =>
    Math.abs(a.up - b.up) < sameMetres && a.facesUp === b.facesUp && a.subject === b.subject;
  return met
    .sort((a, b) => b.up - a.up)
    .filter((surface, i, all) => !all.slice(0, i).some((other) => isAgain(other, surface)));
};

/**
 * How high what one stands on is at a place: of the surfaces with that much air over them, the one nearest in height to a
 * level that one comes from. Nothing there: nought.
 */
const groundUnder = (stage: Stage, place: GroundPoint, fromUp: number, airMetres: number): number => {
  const surfaces = surfacesAt(stage, place);
  let inside = 0;
  let best: number | null = null;
  surfaces.forEach(({ up, facesUp, isSolid }, i) => {
    const above = surfaces[i - 1]?.up ?? Number.POSITIVE_INFINITY;
    const isFree = inside === 0 && facesUp && above - up > airMetres;
    if (isFree && (best === null || Math.abs(up - fromUp) < Math.abs(best - fromUp))) best = up;
    if (isSolid) inside = Math.max(0, inside + (facesUp ? 1 : -1));
  });
  return best ?? surfaces[0]?.up ?? 0;
};

/**
 * Where a lamp was that was gone otherwise than planned: farther or nearer, on round the mark, and higher or lower over
 * what lies under it there, as the card and the phone count.
 *
 * @param waypoint lamp and aim as planned, [east, north, up] in metres
 * @param mark what clocks and paces are counted from, [east, north] in metres
 * @param going how it was gone
 * @returns [east, north, up] in metres
 */
export const movedPlace = (
  stage: Stage,
  { position, aim }: Pick<Pass['waypoints'][number], 'position' | 'aim'>,
  mark: GroundPoint,
  going: Moved,
): Position => {
  const lamp = { place: [position[0], position[1]], aim: [aim[0], aim[1]], riseMetres: aim[2] - position[2] } as const;
  const place = movedOnLevel(lamp, mark, going);
  const heightMetres = heightOverGround(stage, position);
  const airMetres = heightMetres * going.heightTimes;
  return [...place, groundUnder(stage, place, position[2] - heightMetres, airMetres) + airMetres];
};
