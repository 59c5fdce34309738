import type { Lm63Keyword } from './photometric-file.ts';

const maxName = 80;

/** One line: no control characters, no lone surrogates, single spaces, at most 80 characters. */
const cleaned = (text: string): string => {
  const line = text
    .slice(0, 1000)
    .replace(/[\p{C}\p{Z}]+/gu, ' ')
    .trim();
  if (line.length <= maxName) return line;
  // a cut through a surrogate pair leaves half of it
  return `${line
    .slice(0, maxName - 1)
    .replace(/\p{Cs}$/u, '')
    .trim()}…`;
};

/** What to call a lamp: its [LUMINAIRE], else [LUMCAT], else [TEST], on one line of at most 80 characters. */
export const lm63Name = (keywords: readonly Lm63Keyword[]): string => {
  for (const wanted of ['LUMINAIRE', 'LUMCAT', 'TEST'])
    for (const { key, value } of keywords) {
      const name = key === wanted ? cleaned(value) : '';
      if (name !== '') return name;
    }
  return 'Measured lamp';
};
