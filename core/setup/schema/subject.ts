import { z } from 'zod';
import { degrees, finish, fixed, id, metres, name, position, quantity, whole } from './fields.ts';

const placed = {
  position: position
    .default([0, 0, 0])
    .describe('where the part stands, from the subject’s own origin: [east, north, up] in metres'),
  turnDegrees: degrees(-360, 360, 'turn about the vertical, clockwise seen from above').default(0),
  tiltDegrees: degrees(-180, 180, 'lean of the top toward the part’s own north').default(0),
  rollDegrees: degrees(-180, 180, 'lean of the top toward the part’s own east').default(0),
  finish: finish.nullable().default(null).describe('finish of this part; null takes the subject’s'),
};
const size = (description: string) => metres(0.001, 2000, description);
const sides = whole(
  3,
  128,
  'sides round the part; under 8 the faces stay flat, from 8 on the part looks round',
).default(32);

const dimples = z
  .strictObject({
    count: whole(0, 200, 'how many hollows'),
    radiusMetres: metres(0.005, 5, 'radius of a hollow'),
    depthMetres: metres(0, 1, 'depth of a hollow'),
    seed: whole(0, 4294967295, 'any number; another one puts them elsewhere').default(1),
  })
  .describe('shallow round hollows');

/** A solid; every kind stands with the middle of its base on its position. */
export const part = z
  .discriminatedUnion(
    'kind',
    [
      z.strictObject({
        kind: fixed('box', 'a block'),
        ...placed,
        widthMetres: size('width, east to west'),
        depthMetres: size('depth, north to south'),
        heightMetres: size('height'),
        roundMetres: metres(0, 100, 'radius of the edges').default(0),
        topShare: quantity('', 0.05, 2, 'width and depth at the top over those at the foot').default(1),
        dimples: dimples.nullable().default(null).describe('shallow round hollows; null = none'),
      }),
      z.strictObject({
        kind: fixed('cylinder', 'a round post'),
        ...placed,
        radiusMetres: size('radius at the foot'),
        topRadiusMetres: size('radius at the top')
          .nullable()
          .default(null)
          .describe('radius at the top (metres); null = the same as at the foot'),
        heightMetres: size('height'),
        sides,
      }),
      z.strictObject({
        kind: fixed('cone', 'a cone'),
        ...placed,
        radiusMetres: size('radius at the foot'),
        heightMetres: size('height'),
        sides,
      }),
      z.strictObject({
        kind: fixed('sphere', 'a ball or egg'),
        ...placed,
        radiusMetres: size('radius, level'),
        heightMetres: size('from bottom to top')
          .nullable()
          .default(null)
          .describe('height from bottom to top (metres); null = a true ball'),
        sides,
      }),
      z
        .strictObject({
          kind: fixed('capsule', 'a post with round ends'),
          ...placed,
          radiusMetres: size('radius'),
          heightMetres: size('the whole height'),
          sides,
        })
        .refine((c) => c.heightMetres >= 2 * c.radiusMetres, {
          path: ['heightMetres'],
          message: 'must be at least twice the radius',
        }),
      z.strictObject({
        kind: fixed('plane', 'a flat sheet lying on its position, seen from above'),
        ...placed,
        widthMetres: size('width, east to west'),
        depthMetres: size('depth, north to south'),
      }),
    ],
    { error: 'must be a part with kind "box", "cylinder", "cone", "sphere", "capsule" or "plane"' },
  )
  .describe('a solid part');

export const subject = z
  .strictObject({
    id,
    name,
    position: position.default([0, 0, 0]).describe('the subject’s own origin: [east, north, up] in metres'),
    turnDegrees: degrees(-360, 360, 'turn about the vertical, clockwise seen from above').default(0),
    finish: finish.default({ reflectance: 0.2, gloss: 0 }),
    parts: z.array(part).min(1, 'must have at least one part').max(2000, 'must be at most 2000 parts'),
  })
  .describe('a thing to photograph');
