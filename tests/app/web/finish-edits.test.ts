import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  asGrey,
  evenShare,
  glossWord,
  mostEvenShare,
  withColour,
  withEvenShare,
  withTransmittance,
} from '../../../app/web/state/edits/finish-edits.ts';
import { finishNamed } from '../../../core/setup/finish-presets.ts';
import { finish as finishSchema } from '../../../core/setup/schema/fields.ts';
import type { Finish } from '../../../core/setup/schema/setup.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const rgb = fc.tuple(share, share, share);
/** Finishes that a document takes: no more light comes back and goes through than falls in. */
const finishes: fc.Arbitrary<Finish> = fc
  .record({ reflectance: fc.oneof(share, rgb), through: share, gloss: share, metal: fc.boolean() })
  .map(({ reflectance, through, gloss, metal }) => ({
    reflectance,
    transmittance: through * (1 - Math.max(...[reflectance].flat())),
    gloss,
    metal,
    refractiveIndex: 1.5,
  }));
const isTaken = (finish: Finish) => expect(finishSchema.safeParse(finish).success).toBe(true);

describe('edits of a finish', () => {
  it('leave one that the document takes, whatever is asked of whatever (300 drawn, seed 4)', () => {
    fc.assert(
      fc.property(finishes, share, rgb, (finish, asked, colour) => {
        isTaken(withEvenShare(finish, asked));
        isTaken(withColour(finish, colour));
        isTaken(withTransmittance(finish, asked));
        isTaken(asGrey(finish, true));
        isTaken(asGrey(finish, false));
      }),
      { numRuns: 300, seed: 4 },
    );
  });

  it('withEvenShare returns what was asked (abs 0.0002) up to the most that it can, and keeps the hue', () => {
    fc.assert(
      fc.property(finishes, share, (finish, asked) => {
        const most = mostEvenShare(finish);
        expect(evenShare(withEvenShare(finish, asked))).toBeCloseTo(Math.min(asked, most), 3);
      }),
      { numRuns: 300, seed: 5 },
    );
    const half = withEvenShare(finishNamed('brick'), evenShare(finishNamed('brick')) / 2).reflectance as number[];
    const [red, green, blue] = finishNamed('brick').reflectance as [number, number, number];
    expect((half[0] as number) / (half[1] as number)).toBeCloseTo(red / green, 2);
    expect((half[2] as number) / (half[1] as number)).toBeCloseTo(blue / green, 2);
  });

  it('asGrey keeps the share that the eye weighs; back it can be coloured again', () => {
    const grey = asGrey(finishNamed('brick'), true);
    expect(typeof grey.reflectance).toBe('number');
    expect(evenShare(grey)).toBeCloseTo(evenShare(finishNamed('brick')), 3);
    expect(asGrey(grey, false).reflectance).toEqual([grey.reflectance, grey.reflectance, grey.reflectance]);
  });

  it('evenShare weighs red, green and blue as ITU-R BT.709 does', () => {
    const of = (reflectance: [number, number, number]) => evenShare({ ...finishNamed('granite'), reflectance });
    expect([of([1, 0, 0]), of([0, 1, 0]), of([0, 0, 1])]).toEqual([0.2126, 0.7152, 0.0722]);
  });

  it.each([
    [0, 'matt'],
    [0.3, 'satin'],
    [0.7, 'glossy'],
    [0.99, 'glossy'],
    [1, 'mirror'],
  ])('a gloss of %d is called %s', (gloss, word) => {
    expect(glossWord(gloss)).toBe(word);
  });
});
