import { feetText, lengthsInFeet } from '../../../core/units/feet.ts';

export type PageLengths = 'metres' | 'feet';

let present: PageLengths = 'metres';

/** In what the page writes and reads lengths. Said before anything is drawn; another choice draws the page anew. */
export const writeLengthsIn = (lengths: PageLengths): void => {
  present = lengths;
};

export const pageLengths = (): PageLengths => present;

/** A sentence of metres in the lengths of the page. */
export const worded = (text: string): string => (present === 'feet' ? lengthsInFeet(text) : text);

/** One length: "6.0 m" with as many digits, or feet. */
export const lengthWords = (metres: number, digits: number): string =>
  present === 'feet' ? feetText(metres) : `${metres.toFixed(digits)} m`;
