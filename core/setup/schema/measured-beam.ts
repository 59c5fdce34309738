import { z } from 'zod';
import { degrees, id, name, quantity } from './fields.ts';
import { planesRound } from './planes-round.ts';

/** Most candela values of one measured beam, so that a setup stays a small file. */
export const maxBeamValues = 100_000;
/** Most angles either way, and most planes once round: every graphics card can hold a table of that size (WebGL2: 2048). */
export const maxBeamAngles = 2000;

/** Closer angles, and weaker light, would leave no flux to scale the beam by. */
const leastStepDegrees = 0.0001;
const leastPeakCandela = 0.000001;

const ascends = (angles: readonly number[]): boolean =>
  angles.every((angle, i) => i === 0 || angle - (angles[i - 1] as number) >= leastStepDegrees * 0.999);
const angles = (last: number, description: string) =>
  z
    .array(degrees(0, last, 'angle'), { error: 'must be a list of angles in degrees' })
    .min(1, 'must have at least one angle')
    .max(maxBeamAngles, `must be at most ${maxBeamAngles}`)
    .refine(ascends, `must rise from one to the next, by at least ${leastStepDegrees} degrees`)
    .describe(description);

/** Ends of the horizontal angles that say a symmetry: one plane, quadrant, bilateral two ways, or a circle. */
const isKnownSpan = (list: readonly number[]): boolean => {
  const [first, last] = [list[0] as number, list.at(-1) as number];
  return (first === 0 && (list.length === 1 || last === 90 || last >= 180)) || (first === 90 && last === 270);
};

export const measuredBeam = z
  .strictObject({
    id,
    name,
    verticalDegrees: angles(180, 'angles off the beam’s axis (degrees), rising').min(
      2,
      'must have at least two angles',
    ),
    horizontalDegrees: angles(
      360,
      'angles round the beam’s axis (degrees), rising: 0, 0 to 90, 0 to 180, 90 to 270, or the whole circle',
    )
      .refine(isKnownSpan, 'must be 0 alone, or run from 0 to 90, 180 or beyond, or from 90 to 270')
      .refine((list) => planesRound(list) <= maxBeamAngles, {
        error: ({ input }) =>
          `must give at most ${maxBeamAngles} planes once mirrored round the circle, not ${planesRound(input as number[])}`,
        // a list too long has been refused already
        when: ({ issues }) => issues.length === 0,
      }),
    candela: z
      .array(z.array(quantity('candela', 0, 1e9, 'intensity')).max(maxBeamAngles, `must be at most ${maxBeamAngles}`), {
        error: 'must be a list of lists of candela',
      })
      .describe('intensity (candela): one list for each horizontal angle, with a value for each vertical angle'),
  })
  .superRefine(({ verticalDegrees, horizontalDegrees, candela }, context) => {
    const fail = (message: string) => context.addIssue({ code: 'custom', path: ['candela'], message });
    if (candela.length !== horizontalDegrees.length)
      fail(`must have ${horizontalDegrees.length} lists, one for each horizontal angle`);
    else if (candela.some((plane) => plane.length !== verticalDegrees.length))
      fail(`must have ${verticalDegrees.length} values in each list, one for each vertical angle`);
    else if (candela.length * verticalDegrees.length > maxBeamValues)
      fail(`must have at most ${maxBeamValues} values in all`);
    else if (candela.every((plane) => plane.every((value) => value < leastPeakCandela))) fail('must shine somewhere');
  })
  .describe('intensities of a lamp as measured, read from a photometric file (type C)');
