import type { Measure, TextStyle } from './shapes.ts';

const ellipsis = '…';

/** A text cut short to a width, with an ellipsis; whole where it fits. At least the ellipsis is left. */
export const shortened = (text: string, style: TextStyle, widthMm: number, measure: Measure): string => {
  if (measure(text, style) <= widthMm) return text;
  const letters = [...text];
  let [fits, tooLong] = [0, letters.length];
  while (tooLong - fits > 1) {
    const middle = (fits + tooLong) >> 1;
    const cut = `${letters.slice(0, middle).join('').trimEnd()}${ellipsis}`;
    if (measure(cut, style) <= widthMm) fits = middle;
    else tooLong = middle;
  }
  return `${letters
    .slice(0, fits)
    .join('')
    .replace(/[\s,;.:·]+$/u, '')}${ellipsis}`;
};

/**
 * A text in lines of a width, broken between words; a word that is longer than a line is cut short. What does not fit in
 * `mostLines`, one or more, is left out, and the last line ends in an ellipsis.
 */
export const wrapped = (
  text: string,
  style: TextStyle,
  widthMm: number,
  measure: Measure,
  mostLines = Number.POSITIVE_INFINITY,
): string[] => {
  const words = text.split(/\s+/).filter((word) => word !== '');
  const lines: string[] = [];
  let line = '';
  for (const [w, word] of words.entries()) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (measure(longer, style) <= widthMm) {
      line = longer;
      continue;
    }
    if (lines.length === mostLines - 1) {
      const rest = [...(line === '' ? [] : [line]), ...words.slice(w)].join(' ');
      return [...lines, shortened(rest, style, widthMm, measure)];
    }
    if (line !== '') lines.push(line);
    line = measure(word, style) <= widthMm ? word : shortened(word, style, widthMm, measure);
  }
  return line === '' ? lines : [...lines, line];
};
