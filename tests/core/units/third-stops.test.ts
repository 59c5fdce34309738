import { describe, expect, it } from 'vitest';
import { exactFNumber, exactIso, exactSeconds, markedText, stepThird } from '../../../core/units/third-stops.ts';
import { relativeError } from '../support/errors.ts';

/** All markings of a scale, found by stepping up from its lowest. */
const climb = (scale: 'aperture' | 'iso' | 'seconds', lowest: number, highest: number): number[] => {
  const marks = [lowest];
  for (let next = stepThird(scale, lowest, 1); next <= highest; next = stepThird(scale, next, 1)) {
    if (next === marks.at(-1)) break;
    marks.push(next);
  }
  return marks;
};

describe('exact values of marked settings', () => {
  it.each([
    ['aperture', exactFNumber, 1, 32, 31, 1 / 2],
    ['iso', exactIso, 50, 51200, 31, 1],
    ['seconds', exactSeconds, 1 / 8000, 30, 55, 1],
  ] as const)(
    '%s: each marking is exactly a third of a stop from the next (rel 1e-12) and within 0.15 stop of what it says',
    (scale, exact, lowest, highest, count, powerOfLight) => {
      const marks = climb(scale, lowest, highest);
      expect(marks).toHaveLength(count);
      for (const [i, mark] of marks.entries()) {
        // trap T8: f/1.2 is the worst marking, 0.141 stop off
        expect(Math.abs(Math.log2(exact(mark) / mark) / powerOfLight)).toBeLessThanOrEqual(0.15);
        const next = marks[i + 1];
        if (next) expect(relativeError(exact(next) / exact(mark), 2 ** (powerOfLight / 3))).toBeLessThanOrEqual(1e-12);
      }
    },
  );

  it.each([
    ['f/3.7', exactFNumber, 3.7],
    ['f/0.95', exactFNumber, 0.95],
    ['ISO 1000000', exactIso, 1e6],
    ['ISO 150', exactIso, 150],
    ['60 s, read off a watch', exactSeconds, 60],
    ['7 s', exactSeconds, 7],
  ] as const)('%s is no marking of the scale and stays as it is', (_, exact, value) => {
    expect(exact(value)).toBe(value);
  });

  it('a part of a second written as a decimal is still the marking: 0.0333 s and 0.0667 s are 1/32 and 1/16', () => {
    expect(exactSeconds(0.0333)).toBe(1 / 32);
    expect(exactSeconds(0.0667)).toBe(1 / 16);
    expect(exactSeconds(0.034)).toBe(0.034);
  });
});

describe('markedText', () => {
  it.each([
    ['aperture', 2.8, 'f/2.8'],
    ['aperture', 11, 'f/11'],
    ['iso', 12800, 'ISO 12800'],
    ['seconds', 1 / 60, '1/60 s'],
    ['seconds', 0.25, '1/4 s'],
    ['seconds', 0.3, '0.3 s'],
    ['seconds', 20, '20 s'],
    ['seconds', 900, '900 s'],
  ] as const)('%s %d: %s', (scale, value, text) => {
    expect(markedText(scale, value)).toBe(text);
  });
});
