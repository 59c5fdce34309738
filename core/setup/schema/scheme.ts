import { z } from 'zod';
import { camera } from './camera.ts';
import { id, metres, name, position, quantity, whole } from './fields.ts';
import { gel } from './lamp.ts';

const seconds = (min: number, description: string) => quantity('seconds', min, 36000, description);

const waypoint = z
  .strictObject({
    time: seconds(0, 'after the shutter opens').default(0),
    position,
    aim: position.describe('what the lamp points at'),
  })
  .refine((w) => w.position.some((v, i) => Math.abs(v - (w.aim[i] as number)) > 1e-6), {
    path: ['aim'],
    message: 'must differ from position',
  })
  .describe('where a lamp is at a moment, and where it points');

export const pass = z
  .strictObject({
    id,
    name,
    lampId: id.describe('which lamp of the bag'),
    held: z.enum(['hand', 'stand'], { error: 'must be "hand" or "stand"' }).default('hand'),
    on: seconds(0, 'after the shutter opens').default(0),
    off: seconds(0, 'after the shutter opens'),
    levelPercent: quantity('%', 0, 100, 'of the lamp’s full output').default(100),
    gels: z.array(gel).max(8, 'must be at most 8').default([]),
    waypoints: z.array(waypoint).min(1, 'must have at least one waypoint').max(256, 'must be at most 256'),
  })
  .describe('one use of one lamp in one frame');

export const frame = z
  .strictObject({
    id,
    name,
    purpose: z.enum(['sky', 'land', 'painted'], { error: 'must be "sky", "land" or "painted"' }).default('painted'),
    aperture: quantity('', 0.7, 64, 'f-number as marked').default(8),
    seconds: seconds(1 / 8000, 'shutter time').default(10),
    iso: quantity('', 25, 409600, 'ISO speed').default(400),
    whiteBalance: z
      .strictObject({
        kelvin: quantity('kelvin', 2000, 12000, 'light of this temperature comes out neutral').default(4200),
        tint: quantity('', -5, 5, 'green (negative) to magenta (positive)').default(0),
      })
      .default({ kelvin: 4200, tint: 0 }),
    focusMetres: metres(0.05, 10000, 'focus distance').default(8),
    delaySeconds: seconds(0, 'self-timer or delay before the shutter').default(2),
    passes: z.array(pass).max(64, 'must be at most 64').default([]),
  })
  .describe('one shutter opening');

const blend = z
  .strictObject({
    mode: z
      .enum(['lighten', 'add', 'average'], { error: 'must be "lighten", "add" or "average"' })
      .default('lighten')
      .describe('lighten keeps the brighter of each channel'),
    frames: z
      .array(
        z.strictObject({
          frameId: id,
          weight: quantity('', 0, 4, 'strength').default(1),
          where: z.enum(['everything', 'sky', 'ground', 'subject']).default('everything'),
          subjectId: id.nullable().default(null).describe('with where = subject'),
          featherPixels: whole(0, 500, 'soft edge').default(0),
        }),
      )
      .max(64, 'must be at most 64')
      .default([])
      .describe('empty = every frame of the scheme, everywhere, at full strength'),
  })
  .describe('how the frames become one picture');

export const scheme = z
  .strictObject({
    id,
    name,
    camera: camera.nullable().default(null).describe('a camera of its own; null takes the setup’s'),
    frames: z.array(frame).min(1, 'must have at least one frame').max(64, 'must be at most 64'),
    blend: blend.default({ mode: 'lighten', frames: [] }),
  })
  .describe('one way of lighting the setup');
