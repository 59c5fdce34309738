import { describe, expect, it } from 'vitest';
import { parseFeet } from '../../../app/web/fieldcard/parse-feet.ts';

describe('parseFeet', () => {
  // an international foot is 0.3048 m and twelve inches (agreement of 1959)
  it.each([
    ['2.5', 2.5],
    ['2 ft 6 in', 2.5],
    ['2 ft 6', 2.5],
    ["2'6", 2.5],
    ['30 in', 2.5],
    ['0.762 m', 2.5],
    ['2.5 ft', 2.5],
  ])('reads %s', (text, feet) => {
    expect(parseFeet(text)).toBeCloseTo(feet, 9);
  });

  it('reads nothing else', () => {
    expect(parseFeet('two')).toBeNull();
    expect(parseFeet('2 ft 6 kg')).toBeNull();
  });
});
