import { z } from 'zod';
import { fixed, flag } from './fields.ts';
import { creaseDegrees, holesFit, outline, profile, profileFits, section } from './outline.ts';
import { placed, rough, sides, size } from './part-fields.ts';

/** A profile turned about the vertical. */
export const turnedPart = z
  .strictObject({
    kind: fixed('turned', 'a shape turned about the vertical'),
    ...placed,
    profile,
    closed: flag('whether the last point joins the first, as in a well’s rim').default(false),
    sides,
    creaseDegrees,
    rough,
  })
  .superRefine(profileFits);

/** An outline drawn up to a height. */
export const prismPart = z
  .strictObject({
    kind: fixed('prism', 'an outline on the ground, drawn up to a height'),
    ...placed,
    outline,
    holes: z.array(outline).max(16, 'must be at most 16').default([]).describe('holes in the outline'),
    heightMetres: size('height'),
    creaseDegrees,
  })
  .superRefine(holesFit);

/** A skin over sections that follow each other to the north. */
export const loftPart = z
  .strictObject({
    kind: fixed('loft', 'a skin over sections that follow each other to the north, as of a hull'),
    ...placed,
    sections: z
      .array(section)
      .min(2, 'must have at least two sections')
      .max(48, 'must be at most 48')
      .describe('the sections, from south to north'),
    creaseDegrees,
    rough,
  })
  .refine(({ sections: [first, ...rest] }) => rest.every((s) => s.outline.length === first?.outline.length), {
    path: ['sections'],
    message: 'must all have the same number of points',
  })
  .refine(
    ({ sections }) =>
      sections.every((s, i) => i === 0 || s.northMetres >= (sections[i - 1] as typeof s).northMetres + 1e-4),
    {
      path: ['sections'],
      message: 'must go from south to north',
    },
  );
