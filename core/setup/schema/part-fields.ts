import { z } from 'zod';
import { degrees, finish, metres, optionalName, position, whole } from './fields.ts';

/** Name, place, turn and finish: every kind of part has them. */
export const placed = {
  name: optionalName,
  position: position
    .default([0, 0, 0])
    .describe('where the part stands, from the subject’s own origin: [east, north, up] in metres'),
  turnDegrees: degrees(-360, 360, 'turn about the vertical, clockwise seen from above').default(0),
  tiltDegrees: degrees(-180, 180, 'lean of the top toward the part’s own north').default(0),
  rollDegrees: degrees(-180, 180, 'lean of the top toward the part’s own east').default(0),
  finish: finish.nullable().default(null).describe('finish of this part; null takes the subject’s'),
};

/** A length of a part, metres. */
export const size = (description: string) => metres(0.001, 2000, description);

const seed = whole(0, 4294967295, 'any number; another one puts them elsewhere').default(1);

/** How round a part is. */
export const sides = whole(
  3,
  128,
  'sides round the part; under 8 the faces stay flat, from 8 on the part looks round',
).default(32);

/** Shallow round hollows of a block. */
export const dimples = z
  .strictObject({
    count: whole(0, 200, 'how many hollows'),
    radiusMetres: metres(0.005, 5, 'radius of a hollow'),
    depthMetres: metres(0, 1, 'depth of a hollow'),
    seed,
  })
  .describe('shallow round hollows');

/** How uneven a part is; null = even. */
export const rough = z
  .strictObject({
    heightMetres: metres(0, 20, 'how far the surface stands out or in at most'),
    sizeMetres: metres(0.01, 200, 'from bump to bump, about'),
    seed,
  })
  .nullable()
  .default(null)
  .describe('an uneven surface, as of rock; null = even');
