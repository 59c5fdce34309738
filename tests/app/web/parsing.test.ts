import { describe, expect, it } from 'vitest';
import { parseClock } from '../../../app/web/ui/parse-clock.ts';
import { parseHeight } from '../../../app/web/ui/parse-height.ts';
import { parseQuantity } from '../../../app/web/ui/parse-quantity.ts';
import { senseOfStops, signed, threeFigures } from '../../../app/web/ui/words.ts';

describe('parseQuantity', () => {
  it.each([
    ['2.8', '', 2.8],
    ['f/2.8', '', 2.8],
    ['f 11', '', 11],
    ['2,8', '', 2.8],
    ['1/60', 's', 1 / 60],
    ['1.5 min', 's', 90],
    ['45:00', 's', 2700],
    ['0:08', 's', 8],
    ['iso 800', '', 800],
    ['10 ft', 'm', 3.048], // international foot, exactly 0.3048 m
    ['90cm', 'm', 0.9],
    ['-3', 'm', -3],
    [' 5600 K ', 'K', 5600],
    ['.5', 's', 0.5],
    ['1,200', 'lm', 1200],
    [`5'6"`, 'm', 1.6764], // 66 in of 25.4 mm
    ['1,5', 'm', 1.5],
  ])('reads %j in %j', (text, unit, value) => {
    expect(parseQuantity(text, unit)).toBeCloseTo(value, 12);
  });
  it.each([
    ['', 'm'],
    ['two', 'm'],
    ['3 ft', 's'],
    ['1/0', 's'],
    ['1e9', 'm'],
    ['3 m 2', 'm'],
    ['NaN', 'm'],
    ['Infinity', 'm'],
    ['--3', 'm'],
  ])('refuses %j in %j', (text, unit) => {
    expect(parseQuantity(text, unit)).toBeNull();
  });
});

describe('parseClock', () => {
  it.each([
    ['2:30', 2.5],
    ['12', 0],
    ['12:15', 0.25],
    ['2.5', 2.5],
    ['10 o’clock', 10],
    ['0:30', 0.5],
  ])('reads %j', (text, hours) => {
    expect(parseClock(text)).toBeCloseTo(hours, 12);
  });
  it.each([['13'], ['2:60'], [''], ['noon'], ['-3'], ['2:3:4']])('refuses %j', (text) => {
    expect(parseClock(text)).toBeNull();
  });
});

describe('parseHeight', () => {
  it('takes a place on the body or a length (body heights are common practice, no published source)', () => {
    expect([parseHeight(' Shin '), parseHeight('overhead'), parseHeight('1 ft'), parseHeight('high')]).toEqual([
      0.3,
      2.1,
      0.3048,
      null,
    ]);
  });
});

describe('words for numbers', () => {
  it('says a true minus and no sign for nothing', () => {
    expect([signed(1.72), signed(-0.44), signed(-0.04)]).toEqual(['+1.7', '−0.4', '0.0']);
  });
  it('keeps three figures and no tail of noughts', () => {
    expect([8, 0.0123456, 1234.5, 1.5, 0].map(threeFigures)).toEqual(['8', '0.0123', '1235', '1.5', '0']);
  });
  it('gives stops a sense that brightens upward', () => {
    expect([-5, -3, -1.5, 0, 1, 2.5, 4].map(senseOfStops)).toEqual([
      'lost in the night',
      'very dark',
      'dim, as at night',
      'mid-grey, as by day',
      'bright',
      'very bright',
      'burnt',
    ]);
  });
});
