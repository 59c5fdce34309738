import { z } from 'zod';
import { choice, id, localTime, name, plainText, quantity, whole } from './fields.ts';

const orNull = <T extends z.ZodType>(field: T) =>
  field.nullable().default(null).describe(`${field.description}; null = not known`);

/** A pass as it was gone on the night. Ids may lead nowhere: what was done stays true when the plan changes. */
const run = z
  .strictObject({
    at: localTime,
    frameId: id.describe('the frame as it was called then'),
    frameName: name,
    passId: id.describe('the pass as it was called then'),
    passName: name,
    seconds: quantity('seconds', 0, 36000, 'how long the lamp was on, all strokes together'),
    strokes: whole(1, 64, 'how many times the way was gone').default(1),
    distanceTimes: quantity(
      '',
      0.01,
      100,
      'distance of the lamp from what it is aimed at, as a multiple of the planned one',
    ).default(1),
    hoursMoved: quantity('', -12, 12, 'clock positions round the subject from the planned one').default(0),
    heightTimes: quantity('', 0.01, 100, 'height of the lamp, as a multiple of the planned one').default(1),
    levelTimes: quantity('', 0.0001, 10000, 'level of the lamp, as a multiple of the planned one').default(1),
    verdict: choice(['good', 'too-bright', 'too-dark', 'flat', 'not-said'], 'how it looked').default('not-said'),
  })
  .describe('one pass as it was gone');

/** What a photo of the night was taken with. */
const photo = z
  .strictObject({
    name: name.describe('name of the file'),
    at: orNull(localTime.describe('when it was taken, by its camera')),
    frameId: orNull(id.describe('the frame that it is of')),
    passId: orNull(id.describe('the pass that its lit spot is of')),
    aperture: orNull(quantity('', 0.5, 128, 'f-number')),
    seconds: orNull(quantity('seconds', 0.00001, 36000, 'shutter time')),
    iso: orNull(quantity('', 1, 10_000_000, 'ISO speed')),
    focalLengthMm: orNull(quantity('mm', 0.5, 5000, 'focal length')),
    overStops: orNull(quantity('stops', -20, 20, 'lit spot of the photo against the prediction')),
  })
  .describe('settings of a photo; the photo itself is not kept');

export const night = z
  .strictObject({
    id,
    startedAt: localTime.describe('when the first pass was begun'),
    schemeId: id.describe('the scheme as it was called then'),
    schemeName: name,
    note: plainText(2000).default('').describe('what to remember'),
    runs: z.array(run).max(400, 'must be at most 400').default([]),
    photos: z.array(photo).max(200, 'must be at most 200').default([]),
  })
  .describe('a night out: what was done, as it was done');
