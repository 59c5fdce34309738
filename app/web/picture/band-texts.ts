import type { StopsBands } from '../render/stops-bands.ts';
import { signed } from '../ui/words.ts';

/** What the bands of a map of stops are called, in order; the first and the last stand for all beyond them. */
export const bandTexts = ({ first, colours }: StopsBands): string[] =>
  colours.map((_, i) => {
    const number = signed(first + i, 0);
    if (i === 0) return `≤ ${number}`;
    return i === colours.length - 1 ? `≥ ${number}` : number;
  });
