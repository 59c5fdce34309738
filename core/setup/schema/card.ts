import { z } from 'zod';
import { isPlainLine } from '../plain-text.ts';
import { choice, plainText } from './fields.ts';

/** How the field card is written. */
export const card = z
  .strictObject({
    lengths: choice(['metres', 'feet'], 'unit of the lengths on the card').default('metres'),
    paper: choice(['a4', 'letter'], 'paper that it is printed on').default('a4'),
    permission: plainText(160)
      .refine(isPlainLine, 'must be one line')
      .default('')
      .describe('who was asked, and what they said, in a line; empty = a line to write on'),
  })
  .describe('how the field card is written');
