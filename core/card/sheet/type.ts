import { millimetresPerPoint } from './paper.ts';
import type { TextStyle } from './shapes.ts';

/**
 * The type of the card: nothing under 11 points, numbers that one acts on 14 or more (print rules of the trade: common
 * practice, no published source).
 */
export const type = {
  title: { points: 18, weight: 700 },
  count: { points: 16, weight: 700 },
  numeral: { points: 14, weight: 400 },
  strongNumeral: { points: 14, weight: 700 },
  body: { points: 11, weight: 400 },
  strong: { points: 11, weight: 700 },
} as const satisfies Record<string, TextStyle>;

/** From baseline to baseline. */
export const lineMm = (style: TextStyle): number => style.points * millimetresPerPoint * 1.18;

/** Height of capitals and numerals of the typeface over its size. */
const capShare = 0.67;
export const capMm = (style: TextStyle): number => style.points * millimetresPerPoint * capShare;
