import { z } from 'zod';
import { localTime, quantity } from './fields.ts';

/** What one photo told about a lamp. */
export const testShot = z
  .strictObject({
    at: localTime.nullable().default(null).describe('when the photo was taken, by its camera; null = not known'),
    stops: quantity('stops', -20, 20, 'what the lamp gives, against its stated output, by this photo alone'),
    uncertaintyStops: quantity('stops', 0, 20, 'how far off that may be, either way'),
  })
  .describe('a photo that told how much light the lamp really gives');
