import { z } from 'zod';
import { isPlainLine, isPlainText } from '../plain-text.ts';

// no code made from strings: the page's content security policy forbids it
z.config({ jitless: true });

/** A number with its unit and range in the message and in the JSON schema. Infinity and NaN are refused by zod itself. */
export const quantity = (unit: string, min: number, max: number, description: string) =>
  z
    .number({ error: `must be a number${unit ? ` in ${unit}` : ''}, from ${min} to ${max}` })
    .min(min, `must be at least ${min}${unit ? ` ${unit}` : ''}`)
    .max(max, `must be at most ${max}${unit ? ` ${unit}` : ''}`)
    .describe(unit ? `${description} (${unit})` : description);

/** A whole number. */
export const whole = (min: number, max: number, description: string) =>
  quantity('', min, max, description).int('must be a whole number').describe(description);

/** A word that is always the same, such as the kind of a lamp. */
export const fixed = <const T extends string>(value: T, description: string) => z.literal(value).describe(description);

/** One of several words. */
export const choice = <const T extends readonly string[]>(words: T, description: string) =>
  z.enum(words, { error: `must be one of ${words.map((word) => `"${word}"`).join(', ')}` }).describe(description);

/** Yes or no. */
export const flag = (description: string) => z.boolean({ error: 'must be true or false' }).describe(description);

/** Identifier that other parts of the document point to. */
export const id = z
  .string({ error: 'must be an id: letters, digits, - and _' })
  .regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/, 'must be an id: letters, digits, - and _, at most 64 of them')
  .describe('identifier, unique among its kind in the setup');

/** A name shown to people. It stands on one line of a screen, a terminal and a paper, so nothing in it may break the line. */
export const name = z
  .string({ error: 'must be a text' })
  .min(1, 'must not be empty')
  .max(80, 'must be at most 80 characters')
  .refine(isPlainLine, 'must be plain text on one line, without control characters')
  .describe('name shown on screen and on paper');

/** A name that may be left empty. */
export const optionalName = z
  .union([z.literal(''), name], { error: 'must be a text of at most 80 characters on one line' })
  .default('')
  .describe('name shown on screen; empty = none of its own');

/** Free text; lines may break and tabs may stand, other control characters may not. */
export const plainText = (most: number) =>
  z
    .string({ error: 'must be a text' })
    .max(most, `must be at most ${most} characters`)
    .refine(isPlainText, 'must be plain text, without control characters');

/** A place in the scene. */
export const position = z
  .tuple(
    [
      quantity('metres', -5000, 5000, 'east'),
      quantity('metres', -5000, 5000, 'north'),
      quantity('metres', -500, 2000, 'up, 0 = the ground'),
    ],
    { error: 'must be three numbers: [east, north, up] in metres' },
  )
  .describe('[east, north, up] in metres; the origin lies on the ground');

/** A place on the ground. */
export const groundPoint = z
  .tuple([quantity('metres', -5000, 5000, 'east'), quantity('metres', -5000, 5000, 'north')], {
    error: 'must be two numbers: [east, north] in metres',
  })
  .describe('[east, north] in metres');

const share = quantity('', 0, 1, 'share from 0 to 1');

/** Linear RGB, each 0 to 1. */
export const rgb = z
  .tuple([share, share, share], { error: 'must be three numbers from 0 to 1: [red, green, blue]' })
  .describe('linear red, green, blue, each 0 to 1');

/** How a surface returns light, and lets it through. */
export const finish = z
  .strictObject({
    reflectance: z
      .union([share, rgb], { error: 'must be a number from 0 to 1 or three of them' })
      .default(0.2)
      .describe('share of light returned evenly: one grey value or linear [red, green, blue]'),
    transmittance: quantity('', 0, 1, 'share of light let through evenly, as by cloth; 0 = opaque').default(0),
    gloss: quantity(
      '',
      0,
      1,
      'smoothness of the sheen: 0 = matt, without sheen; 1 = a mirror, which shows what stands over it',
    ).default(0),
    refractiveIndex: quantity('', 1, 4, 'of a glossy face that is no metal: water 1.33, paint and stone 1.5').default(
      1.5,
    ),
    metal: flag('whether the sheen has the colour of the reflectance, and nothing is returned evenly').default(false),
  })
  .refine(({ reflectance, transmittance }) => Math.max(...[reflectance].flat()) + transmittance <= 1 + 1e-9, {
    path: ['transmittance'],
    message: 'must be at most 1 together with the reflectance',
  })
  .describe('finish of a surface');

export const degrees = (min: number, max: number, description: string) => quantity('degrees', min, max, description);
export const metres = (min: number, max: number, description: string) => quantity('metres', min, max, description);
export const kelvin = quantity('kelvin', 1667, 25000, 'colour temperature');

/** No 30 February and no 25 o'clock. */
const isRealTime = (text: string): boolean => {
  const time = new Date(`${text}Z`);
  return Number.isFinite(time.getTime()) && time.toISOString().startsWith(text);
};

/** Date and time as a clock on the wall shows it. */
export const localTime = z
  .string({ error: 'must be a date and time such as 2026-10-09T22:30' })
  .regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/, 'must be a date and time such as 2026-10-09T22:30')
  .refine(isRealTime, 'must be a day and time that exist')
  .describe('date and time on the clock, without zone');
