import { z } from 'zod';
import { position } from './fields.ts';

/** A piece of ground or wall that the user drew, kept by its places in the scene: it stays where it is when the camera moves. */
export const patch = z
  .strictObject({
    corners: z
      .tuple([position, position, position, position], { error: 'must be four places: [east, north, up] in metres' })
      .describe('its four corners, in order round it: each [east, north, up] in metres'),
  })
  .describe('a piece of ground or wall whose relief is read');
