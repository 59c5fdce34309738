import { describe, expect, it } from 'vitest';
import { shortened, wrapped } from '../../../core/card/sheet/wrap-text.ts';

/** Every letter a millimetre wide. */
const measure = (text: string) => [...text].length;
const style = { points: 11, weight: 400 } as const;

describe('wrapped', () => {
  it('breaks between words and fills each line as far as it goes', () => {
    expect(wrapped('one two three four', style, 9, measure)).toEqual(['one two', 'three', 'four']);
    expect(wrapped('', style, 9, measure)).toEqual([]);
  });

  it('keeps to the most lines, and says by an ellipsis that there was more', () => {
    expect(wrapped('one two three four', style, 9, measure, 2)).toEqual(['one two', 'three fo…']);
    expect(wrapped('one two three', style, 9, measure, 2)).toEqual(['one two', 'three']);
  });

  it('cuts a word that is longer than a line; no line is ever wider than the width', () => {
    const text = 'a incomprehensibilities of bb cccccccccccccccc d';
    for (const most of [1, 2, 3, 9])
      for (const line of wrapped(text, style, 8, measure, most)) expect(measure(line)).toBeLessThanOrEqual(8);
    expect(wrapped('incomprehensible', style, 8, measure)).toEqual(['incompr…']);
  });
});

describe('shortened', () => {
  it('leaves what fits, cuts what does not, and leaves no comma before the ellipsis', () => {
    expect(shortened('exactly 9', style, 9, measure)).toBe('exactly 9');
    expect(shortened('exactly, ten', style, 9, measure)).toBe('exactly…');
  });
});
