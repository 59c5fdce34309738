import type { CoordinateToken } from './coordinates-tokens.ts';

export type CoordinateAxis = 'latitude' | 'longitude';

/** Why coordinates can't be read. */
export interface CoordinateFault {
  readonly kind: 'fault';
  readonly about: 'empty' | 'form' | 'two-needed' | 'minutes' | 'sign' | 'letters' | 'latitude' | 'longitude';
  /** What was expected, for the person who typed it. */
  readonly words: string;
}

/** One coordinate as typed: degrees with sign, and the axis that its letter tells. */
export interface CoordinateAngle {
  readonly kind: 'angle';
  readonly degrees: number;
  readonly axis: CoordinateAxis | null;
}

export const faultOf = (about: CoordinateFault['about'], words: string): CoordinateFault => ({
  kind: 'fault',
  about,
  words,
});

const order = ['degrees', 'minutes', 'seconds'] as const;
const formWords = 'Expected degrees such as 54.4, or degrees and minutes such as 54 24.5 N.';

/** Degrees of the tokens of one coordinate, its letter before or behind it. */
export const coordinateAngle = (tokens: readonly CoordinateToken[]): CoordinateAngle | CoordinateFault => {
  const numbers = tokens.flatMap((token) => (token.kind === 'number' ? [token] : []));
  const letters = tokens.flatMap((token, place) => (token.kind === 'letter' ? [{ letter: token.letter, place }] : []));
  const [first, ...smaller] = numbers;
  const [letter] = letters;
  if (!first || numbers.length > 3 || numbers.length + letters.length < tokens.length)
    return faultOf('form', formWords);
  if (letters.length > 1 || (letter && letter.place !== 0 && letter.place !== tokens.length - 1))
    return faultOf('letters', 'Expected one letter, N, S, E or W, before or behind each number.');
  if (numbers.some(({ unit }, i) => unit !== null && unit !== order[i])) return faultOf('form', formWords);
  if (smaller.some(({ sign }) => sign !== 0)) return faultOf('form', formWords);
  if (letter && first.sign !== 0)
    return faultOf(
      'sign',
      `Expected either a sign or a letter, not both: ${first.sign < 0 ? '-' : '+'}${first.text} ${letter.letter}.`,
    );
  if (numbers.slice(0, -1).some(({ text }) => text.includes('.')))
    return faultOf('form', 'Expected a fraction in the last number only: 54 24.5, not 54.4 24.5.');
  const over = smaller.findIndex(({ value }) => value >= 60);
  if (over >= 0)
    return faultOf('minutes', `${smaller[over]?.text} is out of range: ${order[over + 1]} go from 0 to under 60.`);
  const size = numbers.reduce((sum, { value }, i) => sum + value / 60 ** i, 0);
  const isMinus = first.sign < 0 || letter?.letter === 'S' || letter?.letter === 'W';
  return {
    kind: 'angle',
    degrees: isMinus ? 0 - size : size,
    axis: letter ? (letter.letter === 'N' || letter.letter === 'S' ? 'latitude' : 'longitude') : null,
  };
};

const limits: Readonly<Record<CoordinateAxis, number>> = { latitude: 90, longitude: 180 };
const names: Readonly<Record<CoordinateAxis, string>> = { latitude: 'Latitude', longitude: 'Longitude' };

/** The fault of a coordinate that is past the end of its axis; null for a good one. */
export const rangeFault = (axis: CoordinateAxis, degrees: number): CoordinateFault | null => {
  const limit = limits[axis];
  if (Math.abs(degrees) <= limit) return null;
  const shown = String(Number(degrees.toFixed(6))).replace('-', '−');
  return faultOf(axis, `${names[axis]} ${shown} is out of range: −${limit} to ${limit} degrees.`);
};
