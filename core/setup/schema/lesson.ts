import { z } from 'zod';
import { id, name, plainText } from './fields.ts';

const predict = z
  .strictObject({
    passId: id.describe('whose shadow is asked for: a pass of the step’s first scheme'),
    subjectId: id.describe('what throws the shadow'),
  })
  .describe('where the tip of a shadow falls; the picture stays hidden until the user has pointed');

const step = z
  .strictObject({
    title: name,
    text: plainText(1200).describe('what to look at, in a few sentences'),
    schemeIds: z
      .array(id)
      .min(1, 'must name at least one scheme')
      .max(6, 'must be at most 6')
      .describe('one scheme is shown in the viewfinder, several stand side by side'),
    predict: predict.nullable().default(null).describe('what the user is asked to point at first; null = nothing'),
  })
  .describe('one step of a lesson');

export const lesson = z
  .strictObject({
    steps: z.array(step).min(1, 'must have at least one step').max(24, 'must be at most 24'),
  })
  .describe('steps that show what the setup teaches');
