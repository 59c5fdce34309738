import { z } from 'zod';
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

/** How high a head is over the springing of its arch, in widths: a half circle, an equilateral pointed arch. */
export const headShare = { flat: 0, round: 0.5, pointed: Math.sqrt(3) / 2 } as const;

/** Height of a wall's upper edge at a place across it. */
const topAt = ({ widthMetres, heightMetres, gableMetres }: Wall, across: number): number =>
  heightMetres + gableMetres * Math.max(1 - Math.abs(across) / (widthMetres / 2), 0);

const fitsWall = (wall: Wall, o: Opening): boolean => {
  const [left, right] = [o.acrossMetres - o.widthMetres / 2, o.acrossMetres + o.widthMetres / 2];
  const spring = o.sillMetres + o.heightMetres - o.widthMetres * headShare[o.head];
  // a straight line from the springing to the top of the head lies under every head; the corners of a flat one are its highest
  const corners: readonly (readonly [number, number])[] = [
    [left, spring],
    [right, spring],
    [o.acrossMetres, o.sillMetres + o.heightMetres],
    ...(o.head === 'flat' ? [] : archPoints(o, spring)),
  ];
  const inside = Math.max(-left, right) <= wall.widthMetres / 2 - leastWall;
  return inside && corners.every(([x, y]) => y <= topAt(wall, x) - leastWall);
};

/** A few points along an arch, where it comes nearest to a sloping gable. */
const archPoints = (o: Opening, spring: number): [number, number][] =>
  [0.25, 0.5, 0.75].flatMap((t) => {
    const half = o.widthMetres / 2;
    const x = half * t;
    const y = o.head === 'round' ? Math.sqrt(half ** 2 - x ** 2) : Math.sqrt((2 * half) ** 2 - (half + x) ** 2);
    return [
      [o.acrossMetres - x, spring + y],
      [o.acrossMetres + x, spring + y],
    ];
  });

const overlap = (a: Opening, b: Opening): boolean =>
  Math.abs(a.acrossMetres - b.acrossMetres) < (a.widthMetres + b.widthMetres) / 2 + leastWall &&
  a.sillMetres < b.sillMetres + b.heightMetres + leastWall &&
  b.sillMetres < a.sillMetres + a.heightMetres + leastWall;

/** Says which opening does not fit in its wall, has a head higher than itself, or runs into another. */
export const hasRoom = (wall: Wall, context: z.RefinementCtx): void => {
  wall.openings.forEach((o, i) => {
    const say = (message: string) => context.addIssue({ code: 'custom', path: ['openings', i], message });
    if (o.heightMetres <= o.widthMetres * headShare[o.head])
      say(`must be higher than ${(o.widthMetres * headShare[o.head]).toFixed(2)} metres for its ${o.head} head`);
    else if (!fitsWall(wall, o)) say('must lie inside the wall');
    else if (wall.openings.slice(0, i).some((other) => overlap(o, other))) say('must not run into another opening');
  });
};
