import { type CoordinateFault, coordinateAngle, faultOf, rangeFault } from './coordinate-angle.ts';
import { type CoordinateToken, coordinateTokens } from './coordinates-tokens.ts';

/** A place in degrees, north and east positive. */
export interface Coordinates {
  readonly kind: 'coordinates';
  readonly latitudeDegrees: number;
  readonly longitudeDegrees: number;
}

const pairWords =
  'Expected latitude and longitude, such as 54.4, -2.6 or 54 24.5 N 2 36 W. With decimal commas, part them by a semicolon: 54,4; -2,6.';

type Two = readonly [readonly CoordinateToken[], readonly CoordinateToken[]];

/** Where the second coordinate begins: at a gap, after or at a letter, at a sign, at a degree sign, or half-way. */
const secondStart = (tokens: readonly CoordinateToken[]): number | null => {
  const placesOf = (test: (token: CoordinateToken) => boolean) =>
    tokens.flatMap((one, i) => (i > 0 && test(one) ? [i] : []));
  const letters = tokens.flatMap((one, i) => (one.kind === 'letter' ? [i] : []));
  if (letters.length > 0) {
    const isBefore = letters[0] === 0;
    const [place] = isBefore ? letters.slice(1) : letters;
    if (place !== undefined && (isBefore || place < tokens.length - 1)) return isBefore ? place : place + 1;
  }
  const signed = placesOf((one) => one.kind === 'number' && one.sign !== 0);
  if (signed.length > 0) return signed.length === 1 ? (signed[0] as number) : null;
  const marked = placesOf((one) => one.kind === 'number' && one.unit === 'degrees');
  if (marked.length > 0) return marked.length === 1 ? (marked[0] as number) : null;
  const numbers = tokens.filter(({ kind }) => kind === 'number').length;
  return letters.length === 0 && numbers % 2 === 0 ? numbers / 2 : null;
};

const splitTokens = (tokens: readonly CoordinateToken[]): Two | null => {
  const gaps = tokens.flatMap(({ kind }, i) => (kind === 'gap' ? [i] : []));
  const [gap] = gaps;
  if (gaps.length > 1) return null;
  if (gap !== undefined) return [tokens.slice(0, gap), tokens.slice(gap + 1)];
  const start = secondStart(tokens);
  return start === null ? null : [tokens.slice(0, start), tokens.slice(start)];
};

/**
 * A place from typed or pasted coordinates: degrees, degrees and minutes, or degrees, minutes and seconds, with signs or
 * with N, S, E and W in either order; without letters, latitude comes first. The minus signs, primes and degree signs
 * of pages and phones are taken, and decimal commas where it is clear that they are such.
 */
export const parseCoordinates = (text: string): Coordinates | CoordinateFault => {
  if (text.trim() === '') return faultOf('empty', pairWords);
  const tokens = coordinateTokens(text);
  if (tokens === null) return faultOf('form', pairWords);
  if (tokens.filter(({ kind }) => kind === 'number').length === 1) return faultOf('two-needed', pairWords);
  const two = splitTokens(tokens);
  if (two === null) return faultOf('form', pairWords);
  const [first, second] = [coordinateAngle(two[0]), coordinateAngle(two[1])];
  if (first.kind === 'fault') return first;
  if (second.kind === 'fault') return second;
  if (first.axis !== null && first.axis === second.axis)
    return faultOf('letters', 'Expected one of N and S, and one of E and W.');
  const isSwapped = first.axis === 'longitude' || second.axis === 'latitude';
  const [latitude, longitude] = isSwapped ? [second, first] : [first, second];
  const fault = rangeFault('latitude', latitude.degrees) ?? rangeFault('longitude', longitude.degrees);
  return fault ?? { kind: 'coordinates', latitudeDegrees: latitude.degrees, longitudeDegrees: longitude.degrees };
};
