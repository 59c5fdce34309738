import { z } from 'zod';
import { choice, degrees, finish, groundPoint, metres, whole } from './fields.ts';

const seed = whole(0, 4294967295, 'any number; another one gives another ground').default(1);
const spread = {
  centre: groundPoint.default([0, 5]).describe('middle of the circle that it covers: [east, north] in metres'),
  radiusMetres: metres(0.1, 500, 'radius of that circle').default(12),
  finish: finish.nullable().default(null).describe('finish of this relief; null takes the ground’s'),
  seed,
};

const strewn = z
  .strictObject({
    kind: choice(
      ['stones', 'tufts', 'pebbles', 'gravel'],
      'angular stones, tufts of grass, rounded pebbles, angular gravel lying close',
    ),
    count: whole(0, 20000, 'how many'),
    heightMetres: z
      .tuple([metres(0.002, 3, 'height of the smallest'), metres(0.002, 3, 'height of the largest')], {
        error: 'must be two numbers: [smallest, largest] height in metres',
      })
      .refine(([low, high]) => low <= high, 'must be [smallest, largest]')
      .describe('[smallest, largest] height in metres'),
    ...spread,
  })
  .describe('small things strewn over the ground that throw shadows');

const sheet = z
  .strictObject({
    kind: choice(['ripples', 'drifts', 'cracks', 'pool'], 'sand ripples, snow drifts, cracked mud, standing water'),
    heightMetres: metres(
      0,
      3,
      'from the lowest to the highest; of a pool, how high its waves are, 0 = a mirror',
    ).default(0.02),
    spacingMetres: metres(0.02, 50, 'from crest to crest, from drift to drift, from crack to crack').default(0.25),
    bearingDegrees: degrees(
      0,
      360,
      'where the wind blows to: ripples and waves run there, drifts lie along it; clockwise from the scene’s north',
    ).default(0),
    ...spread,
  })
  .describe('a surface that covers part of the ground, as real relief');

export const relief = z
  .discriminatedUnion('kind', [strewn, sheet], {
    error: 'must be a relief with kind "stones", "tufts", "pebbles", "gravel", "ripples", "drifts", "cracks" or "pool"',
  })
  .describe('relief of the ground near camera and subjects');

export const ground = z
  .strictObject({
    finish: finish.prefault({ reflectance: 0.12 }),
    relief: z.array(relief).max(8, 'must be at most 8').default([]),
  })
  .describe('the surface under everything');
