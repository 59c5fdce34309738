import { expect } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { SetupError, type SetupErrorKind } from '../../../core/setup/setup-error.ts';

/** JSON that tests take apart; its shape is whatever the test says. */
// biome-ignore lint/suspicious/noExplicitAny: broken documents have no type
export type Loose = any;

/** A small good setup with one of everything that others point to. */
export const goodSetup = (): Loose => ({
  format: 'lampfall-setup',
  version: 3,
  id: 'barn',
  name: 'Barn',
  ground: { relief: [{ kind: 'stones', count: 20, heightMetres: [0.02, 0.1] }] },
  subjects: [
    { id: 'wall', name: 'Wall', parts: [{ kind: 'box', widthMetres: 4, depthMetres: 1, heightMetres: 2 }] },
    { id: 'post', name: 'Post', parts: [{ kind: 'cylinder', radiusMetres: 0.1, heightMetres: 1.5 }] },
  ],
  camera: { position: [0, 0, 1.5], aim: [0, 8, 1] },
  lamps: [
    {
      kind: 'torch',
      id: 'torch',
      name: 'Torch',
      output: { from: 'lumens', lumens: 100 },
      beam: { shape: 'spot', beamDegrees: 20 },
    },
    { kind: 'panel', id: 'panel', name: 'Panel', output: { from: 'lumens', lumens: 20 }, widthMm: 100, heightMm: 60 },
  ],
  schemes: [
    {
      id: 'side',
      name: 'Side',
      frames: [
        { id: 'sky', name: 'Sky', purpose: 'sky' },
        {
          id: 'land',
          name: 'Land',
          seconds: 10,
          passes: [
            {
              id: 'key',
              name: 'Key',
              lampId: 'torch',
              on: 1,
              off: 5,
              gels: [{ name: 'Warm', shiftMired: 60, transmission: 0.8 }],
              waypoints: [
                { time: 0, position: [5, 6, 1], aim: [0, 8, 1] },
                { time: 4, position: [6, 6, 1], aim: [0, 8, 1] },
              ],
            },
            {
              id: 'fill',
              name: 'Fill',
              lampId: 'panel',
              off: 9,
              waypoints: [{ position: [-5, 6, 1], aim: [0, 8, 1] }],
            },
          ],
        },
      ],
      blend: { frames: [{ frameId: 'land' }, { frameId: 'sky', where: 'subject', subjectId: 'wall' }] },
    },
  ],
});

/** The text of the good setup after a change. */
export const changed = (change: (setup: Loose) => void): string => {
  const setup = goodSetup();
  change(setup);
  return JSON.stringify(setup);
};

/** The SetupError that a text gives. Anything else that is thrown, or nothing, fails the test. */
export const errorOf = (text: string): SetupError => {
  try {
    parseSetup(text);
  } catch (error) {
    if (error instanceof SetupError) return error;
    throw error;
  }
  throw new Error('the text was taken as a good setup');
};

/** One malformed setup: its name, its text, and the error's kind, path and some of its words. */
export type MalformedCase = readonly [
  name: string,
  text: () => string,
  kind: SetupErrorKind,
  path: string,
  words: string,
];

/** Holds an error to its case, and to the promise of one line of at most 200 characters. */
export const expectError = (error: SetupError, kind: SetupErrorKind, path: string, words: string): void => {
  expect({ kind: error.kind, path: error.path }).toEqual({ kind, path });
  expect(error.expected).toContain(words);
  expect(error.message).toBe(path ? `${path}: ${error.expected}` : error.expected);
  expect(error.message.length).toBeLessThanOrEqual(200);
  expect(error.message).not.toMatch(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u);
};
