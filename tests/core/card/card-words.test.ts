import { describe, expect, it } from 'vitest';
import {
  bearingText,
  countText,
  dateText,
  focusText,
  lengthText,
  levelText,
  onText,
  pacesText,
  roundText,
} from '../../../core/card/card-words.ts';
import { gelWord } from '../../../core/card/gel-word.ts';

describe('words of the card', () => {
  it('lengths in metres or in feet of 0.3048 m; infinity for a focus alone', () => {
    expect([0.45, 6, 80].map((metres) => lengthText(metres, 'metres'))).toEqual(['0.45 m', '6.0 m', '80 m']);
    expect([0.3048 / 2, 3.048, 30.48].map((metres) => lengthText(metres, 'feet'))).toEqual([
      '0.5 ft',
      '10 ft',
      '100 ft',
    ]);
    // a lamp or a camera 600 m away is 600 m away
    expect(lengthText(600, 'metres')).toBe('600 m');
    // a lens focused there is set at its infinity mark
    expect([null, 10_000, 600].map((metres) => focusText(metres, 'metres'))).toEqual(Array(3).fill('infinity'));
    expect(focusText(30, 'metres')).toBe('30 m');
  });

  it('paces are whole, halves under three', () => {
    expect([0, 0.2, 0.4, 1.6, 2.4, 2.8, 7.5, 12.4].map(pacesText)).toEqual(['0', '0', '½', '1½', '2½', '3', '8', '12']);
  });

  it('turns round the mark say their side, but for straight before and behind', () => {
    expect([105, -90, 0.3, 180, -179.8].map((roundDegrees) => roundText({ roundDegrees }))).toEqual([
      'right 105°',
      'left 90°',
      '0°',
      '180°',
      '180°',
    ]);
  });

  it('levels, counts, bearings and dates', () => {
    expect([100, 25, 0.5, 12.5].map(levelText)).toEqual(['full', '25 %', '0.5 %', '12.5 %']);
    expect(countText({ staysOn: false, countSeconds: 1.6000000001 })).toBe('1.6');
    expect(countText({ staysOn: true, countSeconds: 20 })).toBe('all');
    expect(onText({ staysOn: false, onSeconds: 14 })).toBe('at 14 s');
    expect(onText({ staysOn: true, onSeconds: 0 })).toBe('stays on');
    expect([0, 44, 104, 359.6].map(bearingText)).toEqual(['0° N', '44° NE', '104° E', '0° N']);
    // 9 October 2026 is a Friday
    expect(dateText({ localTime: '2026-10-09T22:30' })).toBe('Fri 9 Oct 2026');
  });
});

describe('gelWord', () => {
  const bare = { gels: [], cloth: null, snootDegrees: null };

  it('names what is in front of a lamp in the order of the light; a cloth that takes no light is a cloth all the same', () => {
    const cloth = { stops: 1.5, spreadShare: 0.5 };
    expect(gelWord({ gels: [], cloth, snootDegrees: 20 })).toBe('cloth 1.5 stops + snoot 20°');
    expect(gelWord({ ...bare, cloth: { ...cloth, stops: 0 } })).toBe('cloth');
    expect(gelWord(bare)).toBe('none');
  });
});
