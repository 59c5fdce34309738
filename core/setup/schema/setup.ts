import { z } from 'zod';
import { camera } from './camera.ts';
import { card } from './card.ts';
import { fixed, id, name, plainText, quantity, whole } from './fields.ts';
import { ground } from './ground.ts';
import { hazard } from './hazard.ts';
import { lamp } from './lamp.ts';
import { lesson } from './lesson.ts';
import { measuredBeam } from './measured-beam.ts';
import { night } from './night.ts';
import { patch } from './patch.ts';
import { place } from './place.ts';
import { scan } from './scan.ts';
import { scheme } from './scheme.ts';
import { subject } from './subject.ts';
import { walking } from './walking.ts';

/** The version that this program writes. */
export const setupVersion = 3;

const note = plainText(4000).default('').describe('what to know about the setup, in a few sentences');

/** The whole document, schema version 3. References between its parts are checked in `references.ts`. */
export const setupSchema = z
  .strictObject({
    format: fixed('lampfall-setup', 'says that the file holds a Lampfall setup'),
    version: z.literal(setupVersion, { error: `must be ${setupVersion}` }).describe('version of this file format'),
    id,
    name,
    note,
    bounces: whole(0, 2, 'how many times light is followed from surface to surface').default(0),
    nightLevelStops: quantity('stops', -4, 1, 'how bright a lit target should be, from mid-grey').default(-1.5),
    place: place.prefault({}),
    ground: ground.prefault({}),
    subjects: z.array(subject).max(500, 'must be at most 500').default([]),
    camera,
    walking: walking.prefault({}),
    hazards: z
      .array(hazard)
      .max(64, 'must be at most 64')
      .default([])
      .describe('edges, bogs, water: where nobody should walk or stand in the dark'),
    lamps: z.array(lamp).max(64, 'must be at most 64').default([]),
    measuredBeams: z.array(measuredBeam).max(8, 'must be at most 8').default([]),
    scans: z.array(scan).max(8, 'must be at most 8').default([]),
    patch: patch.nullable().default(null).describe('a piece of ground or wall whose relief is read; null = none'),
    lesson: lesson.nullable().default(null).describe('what the setup teaches, step by step; null = it is no lesson'),
    card: card.prefault({}),
    nights: z
      .array(night)
      .max(60, 'must be at most 60')
      .default([])
      .describe('nights out with this setup, the latest last'),
    schemes: z.array(scheme).min(1, 'must have at least one scheme').max(24, 'must be at most 24'),
  })
  .describe('A Lampfall setup: one place, subjects, a camera, lamps, and ways of lighting them');

export type Setup = z.output<typeof setupSchema>;
export type Scheme = Setup['schemes'][number];
export type Frame = Scheme['frames'][number];
export type Pass = Frame['passes'][number];
export type Waypoint = Pass['waypoints'][number];
export type Gel = Pass['gels'][number];
export type Cloth = NonNullable<Pass['cloth']>;
export type Lamp = Setup['lamps'][number];
export type Beam = Extract<Lamp, { beam: unknown }>['beam'];
export type MeasuredBeam = Setup['measuredBeams'][number];
export type Subject = Setup['subjects'][number];
export type Part = Subject['parts'][number];
export type Camera = Setup['camera'];
export type PartKind = Part['kind'];
export type PartOf<K extends PartKind> = Extract<Part, { kind: K }>;
export type Opening = PartOf<'wall'>['openings'][number];
export type Scan = Setup['scans'][number];
export type Ground = Setup['ground'];
export type Relief = Ground['relief'][number];
export type Finish = Subject['finish'];
export type Patch = NonNullable<Setup['patch']>;
export type Walking = Setup['walking'];
export type Hazard = Setup['hazards'][number];
export type Lesson = NonNullable<Setup['lesson']>;
export type Night = Setup['nights'][number];
export type NightRun = Night['runs'][number];
export type NightPhoto = Night['photos'][number];
export type TestShot = Lamp['testShots'][number];
export type Position = Waypoint['position'];
