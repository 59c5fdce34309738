import { z } from 'zod';
import { loftPart, prismPart, turnedPart } from './drawn-parts.ts';
import { degrees, fixed, id, metres, quantity } from './fields.ts';
import { hasRoom, opening } from './opening.ts';
import { dimples, placed, rough, sides, size } from './part-fields.ts';

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
      turnedPart,
      prismPart,
      loftPart,
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
