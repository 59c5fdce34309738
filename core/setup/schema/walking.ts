import { z } from 'zod';
import { choice, flag, quantity } from './fields.ts';

/** Who goes from pass to pass with the lamp in hand. */
export const walking = z
  .strictObject({
    metresPerSecond: quantity(
      'm/s',
      0.2,
      2,
      'how fast one walks in the dark: rough ground about 0.5, a path 0.8, brisk 1.2',
    ).default(0.8),
    keepsOutOfPicture: flag('whether one walks round what the camera sees instead of through it').default(false),
    paceMetres: quantity('metres', 0.3, 1.5, 'length of one pace, for the field card').default(0.75),
    clothes: choice(['dark', 'light'], 'what whoever holds a lamp wears').default('dark'),
  })
  .describe('whoever holds the lamps, and walks from one pass to the next');
