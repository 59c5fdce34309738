import type { Caution } from '../../../core/cautions/caution.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { feetText, type Lengths, lengthsInFeet } from '../../../core/units/feet.ts';

let present: Lengths = 'metres';

/** In what the page writes and reads lengths. Said as the page is drawn, which another choice does again. */
export const writeLengthsIn = (lengths: Lengths): void => {
  present = lengths;
};

export const pageLengths = (): Lengths => present;

/** A sentence of metres in the lengths of the page; names in it stand in quotation marks. */
export const worded = (text: string): string => (present === 'feet' ? lengthsInFeet(text) : text);

/** What a caution says, in the lengths of the page; the names of frames and passes of its scheme stay as they are. */
export const cautionSentence = ({ message }: Pick<Caution, 'message'>, { frames }: Pick<Scheme, 'frames'>): string =>
  present === 'feet'
    ? lengthsInFeet(
        message,
        frames.flatMap(({ name, passes }) => [name, ...passes.map((pass) => pass.name)]),
      )
    : message;

/** One length: "6.0 m" with as many digits, or feet. */
export const lengthWords = (metres: number, digits: number): string =>
  present === 'feet' ? feetText(metres) : `${metres.toFixed(digits)} m`;
