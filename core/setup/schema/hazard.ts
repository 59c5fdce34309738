import { z } from 'zod';
import { groundPoint, id, metres, name } from './fields.ts';

/** A place where nobody should walk or stand in the dark, as a circle on the ground. */
export const hazard = z
  .strictObject({
    id,
    name: name.describe('what it is, in a word: edge, bog, deep water, road'),
    position: groundPoint.describe('its middle: [east, north] in metres'),
    radiusMetres: metres(0.5, 500, 'how far it reaches from its middle'),
  })
  .describe('a place to keep off in the dark');
