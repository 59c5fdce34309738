import { z } from 'zod';
import { degrees, finish, flag, id, name, position, whole } from './fields.ts';
import { part } from './part.ts';

const kit = z
  .strictObject({
    name: id.describe('which kit'),
    values: z
      .record(id, z.number({ error: 'must be a number' }))
      .refine((values) => Object.keys(values).length <= 32, 'must be at most 32 values')
      .describe('the numbers that were typed'),
    seed: whole(0, 4294967295, 'any number; another one gives another of its kind').default(1),
  })
  .describe('the numbers that the parts were made from');

export const subject = z
  .strictObject({
    id,
    name,
    position: position.default([0, 0, 0]).describe('the subject’s own origin: [east, north, up] in metres'),
    turnDegrees: degrees(-360, 360, 'turn about the vertical, clockwise seen from above').default(0),
    tiltDegrees: degrees(-180, 180, 'lean of the top toward the subject’s own north').default(0),
    rollDegrees: degrees(-180, 180, 'lean of the top toward the subject’s own east').default(0),
    mirrored: flag('whether east and west of the subject are exchanged').default(false),
    hidden: flag('whether it is left out of the picture and of all numbers').default(false),
    locked: flag('whether it is kept from being moved by hand').default(false),
    group: name.nullable().default(null).describe('subjects with the same group move together; null = none'),
    finish: finish.prefault({ reflectance: 0.2 }),
    kit: kit.nullable().default(null).describe('what the parts were made from; null = they were made one by one'),
    parts: z.array(part).min(1, 'must have at least one part').max(2000, 'must be at most 2000 parts'),
  })
  .describe('a thing to photograph');
