import { z } from 'zod';
import { degrees, finish, fixed, flag, id, metres, optionalName, position, quantity, whole } from './fields.ts';
import { hasRoom, opening } from './opening.ts';
import { creaseDegrees, holesFit, outline, profile, profileFits, section } from './outline.ts';

const placed = {
  name: optionalName,
  position: position
    .default([0, 0, 0])
    .describe('where the part stands, from the subject’s own origin: [east, north, up] in metres'),
  turnDegrees: degrees(-360, 360, 'turn about the vertical, clockwise seen from above').default(0),
  tiltDegrees: degrees(-180, 180, 'lean of the top toward the part’s own north').default(0),
  rollDegrees: degrees(-180, 180, 'lean of the top toward the part’s own east').default(0),
  finish: finish.nullable().default(null).describe('finish of this part; null takes the subject’s'),
};
const size = (description: string) => metres(0.001, 2000, description);
const seed = whole(0, 4294967295, 'any number; another one puts them elsewhere').default(1);
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
    seed,
  })
  .describe('shallow round hollows');

const rough = z
  .strictObject({
    heightMetres: metres(0, 20, 'how far the surface stands out or in at most'),
    sizeMetres: metres(0.01, 200, 'from bump to bump, about'),
    seed,
  })
  .nullable()
  .default(null)
  .describe('an uneven surface, as of rock; null = even');

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
        rough,
      }),
      z.strictObject({
        kind: fixed('wedge', 'a roof or a ramp: a block that narrows to a ridge'),
        ...placed,
        widthMetres: size('width, along the ridge, east to west'),
        depthMetres: size('depth, north to south'),
        heightMetres: size('height of the ridge'),
        ridgeShare: quantity(
          '',
          0,
          1,
          'where the ridge lies: 0 = over the south edge, 1 = over the north edge',
        ).default(0.5),
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
        rough,
      }),
      z.strictObject({
        kind: fixed('cone', 'a cone'),
        ...placed,
        radiusMetres: size('radius at the foot'),
        heightMetres: size('height'),
        sides,
        rough,
      }),
      z.strictObject({
        kind: fixed('sphere', 'a ball or egg'),
        ...placed,
        radiusMetres: size('radius, level, east to west'),
        radiusNorthMetres: size('radius north to south')
          .nullable()
          .default(null)
          .describe('radius north to south (metres); null = the same as east to west'),
        heightMetres: size('from bottom to top')
          .nullable()
          .default(null)
          .describe('height from bottom to top (metres); null = twice the radius'),
        sides,
        rough,
      }),
      z
        .strictObject({
          kind: fixed('capsule', 'a post with round ends'),
          ...placed,
          radiusMetres: size('radius'),
          heightMetres: size('the whole height'),
          sides,
          rough,
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
        rough,
      }),
      z
        .strictObject({
          kind: fixed('ring', 'part of a ring, upright like an arch over its position, running east to west'),
          ...placed,
          radiusMetres: size('from the ring’s centre to the middle of its tube'),
          tubeRadiusMetres: size('radius of the tube at the ends'),
          topShare: quantity('', 0.1, 3, 'radius of the tube at the top over that at the ends').default(1),
          arcDegrees: degrees(10, 360, 'how much of the ring there is; 180 = an arch, 360 = a whole ring').default(180),
          sides,
          rough,
        })
        .refine((r) => r.tubeRadiusMetres * Math.max(r.topShare, 1) < r.radiusMetres, {
          path: ['tubeRadiusMetres'],
          message: 'must be smaller than the radius of the ring, at the top too',
        }),
      z
        .strictObject({
          kind: fixed('turned', 'a shape turned about the vertical'),
          ...placed,
          profile,
          closed: flag('whether the last point joins the first, as in a well’s rim').default(false),
          sides,
          creaseDegrees,
          rough,
        })
        .superRefine(profileFits),
      z
        .strictObject({
          kind: fixed('prism', 'an outline on the ground, drawn up to a height'),
          ...placed,
          outline,
          holes: z.array(outline).max(16, 'must be at most 16').default([]).describe('holes in the outline'),
          heightMetres: size('height'),
          creaseDegrees,
        })
        .superRefine(holesFit),
      z
        .strictObject({
          kind: fixed('loft', 'a skin over sections that follow each other to the north, as of a hull'),
          ...placed,
          sections: z
            .array(section)
            .min(2, 'must have at least two sections')
            .max(48, 'must be at most 48')
            .describe('the sections, from south to north'),
          creaseDegrees,
          rough,
        })
        .refine(({ sections: [first, ...rest] }) => rest.every((s) => s.outline.length === first?.outline.length), {
          path: ['sections'],
          message: 'must all have the same number of points',
        })
        .refine(
          ({ sections }) =>
            sections.every((s, i) => i === 0 || s.northMetres >= (sections[i - 1] as typeof s).northMetres + 1e-4),
          {
            path: ['sections'],
            message: 'must go from south to north',
          },
        ),
      z
        .strictObject({
          kind: fixed('wall', 'an upright wall that runs east to west, with openings'),
          ...placed,
          widthMetres: size('width, east to west'),
          thicknessMetres: size('thickness, north to south'),
          heightMetres: size('height, without the gable'),
          gableMetres: metres(0, 200, 'height of the gable over the wall; 0 = none').default(0),
          openings: z.array(opening).max(24, 'must be at most 24').default([]),
        })
        .superRefine(hasRoom),
      z.strictObject({
        kind: fixed('scan', 'a scan of a real thing'),
        ...placed,
        scanId: id.describe('which scan of the setup it shows'),
        scale: quantity('', 0.001, 1000, 'its size over that of the scan').default(1),
      }),
    ],
    {
      error:
        'must be a part with kind "box", "wedge", "cylinder", "cone", "sphere", "capsule", "plane", "ring", "turned", "prism", "loft", "wall" or "scan"',
    },
  )
  .describe('a solid part');
