import { z } from 'zod';
import { infinityMetres, nearestFocusMetres } from '../../units/focus-range.ts';
import { camera } from './camera.ts';
import { choice, degrees, id, metres, name, position, quantity, whole } from './fields.ts';
import { cloth, gel } from './lamp.ts';

const seconds = (min: number, description: string) => quantity('seconds', min, 36000, description);

const waypoint = z
  .strictObject({
    time: seconds(0, 'after the shutter opens, on the first stroke').default(0),
    position: position.describe('the lamp: [east, north, up] in metres'),
    aim: position.describe('what the lamp points at: [east, north, up] in metres'),
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
    held: choice(['hand', 'stand'], 'whether the lamp is held in the hand or stands').default('hand'),
    on: seconds(0, 'lamp on, after the shutter opens').default(0),
    off: seconds(0, 'lamp off, after the shutter opens; at most the shutter time'),
    levelPercent: quantity('%', 0, 100, 'level, as a share of the lamp’s full output').default(100),
    gels: z.array(gel).max(8, 'must be at most 8').default([]),
    cloth: cloth.nullable().default(null).describe('diffusion cloth over the lamp; null = none'),
    snootDegrees: degrees(1, 180, 'full angle')
      .nullable()
      .default(null)
      .describe('full angle that a tube in front of the lamp lets pass (degrees); null = none'),
    waypoints: z
      .array(waypoint)
      .min(1, 'must have at least one waypoint')
      .max(256, 'must be at most 256')
      .describe('the way of the first stroke, which lasts from on for (off - on) / strokes'),
    strokes: whole(1, 64, 'how many times the way is gone, there and back in turn').default(1),
    dwell: choice(
      ['typed', 'even-speed', 'even-dose'],
      'how the waypoint times are set: typed, at even speed, or so that the dose at the aim points comes out even',
    ).default('typed'),
  })
  .describe('one use of one lamp in one frame');

export const frame = z
  .strictObject({
    id,
    name,
    purpose: choice(['sky', 'land', 'painted'], 'what the frame is for').default('painted'),
    aperture: quantity('', 0.7, 64, 'f-number as marked').default(8),
    seconds: seconds(1 / 8000, 'shutter time').default(10),
    iso: quantity('', 25, 409600, 'ISO speed').default(400),
    whiteBalance: z
      .strictObject({
        kelvin: quantity('kelvin', 2000, 12000, 'light of this temperature comes out neutral').default(4200),
        tint: quantity('', -5, 5, 'green (negative) to magenta (positive)').default(0),
      })
      .default({ kelvin: 4200, tint: 0 })
      .describe('white balance of the camera'),
    focusMetres: metres(nearestFocusMetres, infinityMetres, 'focus distance').default(8),
    delaySeconds: seconds(0, 'self-timer or delay before the shutter').default(2),
    passes: z.array(pass).max(64, 'must be at most 64').default([]),
  })
  .describe('one shutter opening');

const blend = z
  .strictObject({
    mode: choice(['lighten', 'add', 'average'], 'lighten keeps the brighter of each channel').default('lighten'),
    frames: z
      .array(
        z.strictObject({
          frameId: id.describe('which frame of the scheme'),
          weight: quantity('', 0, 4, 'strength, 1 = as exposed').default(1),
          where: choice(
            ['everything', 'sky', 'land', 'ground', 'subject'],
            'where the frame counts; land = all that is not sky, ground = without the subjects on it',
          ).default('everything'),
          subjectId: id.nullable().default(null).describe('with where = subject'),
          featherPixels: whole(0, 500, 'width of the soft edge, in pixels of the sensor').default(0),
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
