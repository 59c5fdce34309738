import { z } from 'zod';
import { headShare } from '../head-share.ts';
import { choice, metres, quantity } from './fields.ts';

export const opening = z
  .strictObject({
    acrossMetres: quantity('metres', -1000, 1000, 'middle of the opening, from the middle of the wall, east positive'),
    sillMetres: metres(0, 200, 'height of its lower edge; 0 = a doorway'),
    widthMetres: metres(0.02, 500, 'width'),
    heightMetres: metres(0.02, 500, 'height from sill to the top of its head'),
    head: choice(['flat', 'round', 'pointed'], 'shape of its upper end').default('flat'),
  })
  .describe('a doorway, a window or an archway');

type Opening = z.output<typeof opening>;
interface Wall {
  readonly widthMetres: number;
  readonly heightMetres: number;
  readonly gableMetres: number;
  readonly openings: readonly Opening[];
}

/** Least wall that is left beside and over an opening, metres. */
const leastWall = 0.005;

/** A part of a circle, angles in radians from east, counter-clockwise seen from the south. */
interface Arc {
  readonly centre: readonly [east: number, up: number];
  readonly radius: number;
  readonly from: number;
  readonly to: number;
}

/** The arcs of a head: half a circle, or two arcs as wide as the opening, each about the other's springing. */
const arcsOf = (o: Opening, spring: number): readonly Arc[] => {
  const half = o.widthMetres / 2;
  if (o.head === 'flat') return [];
  if (o.head === 'round') return [{ centre: [o.acrossMetres, spring], radius: half, from: 0, to: Math.PI }];
  return [
    { centre: [o.acrossMetres - half, spring], radius: 2 * half, from: 0, to: Math.PI / 3 },
    { centre: [o.acrossMetres + half, spring], radius: 2 * half, from: (2 * Math.PI) / 3, to: Math.PI },
  ];
};

/** How far an arc reaches in a direction, from the origin. */
const reachOf = ({ centre, radius, from, to }: Arc, angle: number): number => {
  const nearest = Math.min(Math.max(angle, from), to);
  return centre[0] * Math.cos(angle) + centre[1] * Math.sin(angle) + radius * Math.cos(angle - nearest);
};

const fitsWall = (wall: Wall, o: Opening): boolean => {
  const [left, right] = [o.acrossMetres - o.widthMetres / 2, o.acrossMetres + o.widthMetres / 2];
  const top = o.sillMetres + o.heightMetres;
  const spring = top - o.widthMetres * headShare[o.head];
  if (Math.max(-left, right) > wall.widthMetres / 2 - leastWall) return false;
  if (wall.gableMetres === 0) return top <= wall.heightMetres - leastWall;
  // both slopes of the gable, each by its outward direction
  const steep = Math.atan2(wall.widthMetres / 2, wall.gableMetres);
  return [steep, Math.PI - steep].every((angle) => {
    const [east, up] = [Math.cos(angle), Math.sin(angle)];
    const limit = (wall.heightMetres + wall.gableMetres) * up - leastWall;
    const corners = [left, right].map((across) => across * east + (o.head === 'flat' ? top : spring) * up);
    return Math.max(...corners, ...arcsOf(o, spring).map((arc) => reachOf(arc, angle))) <= limit;
  });
};

const overlap = (a: Opening, b: Opening): boolean =>
  Math.abs(a.acrossMetres - b.acrossMetres) < (a.widthMetres + b.widthMetres) / 2 + leastWall &&
  a.sillMetres < b.sillMetres + b.heightMetres + leastWall &&
  b.sillMetres < a.sillMetres + a.heightMetres + leastWall;

/** Says which opening does not fit in its wall, has a head higher than itself, or runs into another. */
export const hasRoom = (wall: Wall, context: z.RefinementCtx): void => {
  wall.openings.forEach((o, i) => {
    const say = (message: string) => context.addIssue({ code: 'custom', path: ['openings', i], message });
    // a jamb of a millimetre is left under the head
    if (o.heightMetres < o.widthMetres * headShare[o.head] + 0.001)
      say(`must be higher than ${(o.widthMetres * headShare[o.head]).toFixed(2)} metres for its ${o.head} head`);
    else if (!fitsWall(wall, o)) say('must lie inside the wall');
    else if (wall.openings.slice(0, i).some((other) => overlap(o, other))) say('must not run into another opening');
  });
};
