import { describe, expect, it } from 'vitest';
import { burnShort } from '../../../core/card/burn-short.ts';
import type { CardRow } from '../../../core/card/card-row.ts';
import { cautionTexts } from '../../../core/card/caution-lines.ts';
import { limits } from '../../../core/cautions/limits.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

const row = {
  staysOn: false,
  countSeconds: 8,
  levelPercent: 100,
  lowestLevelPercent: 1,
} as CardRow;
const by = (stops: number, of: Partial<CardRow> = {}) =>
  burnShort({ value: limits.burntStops + stops, limit: limits.burntStops }, { ...row, ...of });

describe('what would do for a pass that burns, on the card', () => {
  // a stop is half the light, by half the count or half the level
  it.each([
    [1, {}, 'burns by 1.0 stops: count 4 s, or turn the lamp down to 50 %'],
    [2, { lowestLevelPercent: 30 }, 'burns by 2.0 stops: count 2 s'],
    [5, {}, 'burns by 5.0 stops: turn the lamp down to 3.1 %'],
    [3, { lowestLevelPercent: 20 }, 'burns by 3.0 stops: count 2 s with the lamp at 50 %'],
    [5, { lowestLevelPercent: 100 }, 'burns by 5.0 stops: take 5.0 stops off: step back, or more cloth'],
    [2, { staysOn: true }, 'burns by 2.0 stops: turn the lamp down to 25 %'],
    [0.02, {}, 'burns by 0.1 stops: count 7 s, or turn the lamp down to 98 %'],
  ])('%s stops over, %o', (stops, of, words) => expect(by(stops, of)).toBe(words));

  it('never leaves it burnt: what is told is as dark or darker than it must be', () => {
    for (let stops = 0.07; stops < 6; stops += 0.31) {
      const words = by(stops) ?? '';
      const count = / count (\d+) s/.exec(words)?.[1];
      const level = /to ([\d.]+) %/.exec(words)?.[1];
      if (count) expect(Number(count) / 8).toBeLessThanOrEqual(2 ** -stops);
      expect(Number(level) / 100).toBeLessThanOrEqual(2 ** -stops);
    }
  });

  it('with other passes, says so of all', () => {
    expect(burnShort({ value: limits.burntStops + 1, limit: limits.burntStops, isTogether: true }, row)).toBe(
      'burns by 1.0 stops with the frame’s other passes: 2.0 times shorter counts, or split the frame',
    );
  });

  it('is silent where it is not known by how much', () => {
    expect(burnShort({}, row)).toBeNull();
    expect(burnShort({ value: limits.burntStops + 1 }, row)).toBeNull();
  });

  it('has the size of the page on the card', () => {
    const setup = stoneSetup(
      passFrom('close', 4, 3, 1, { off: 9, waypoints: [{ position: [2, -3, 1], aim: [0, 0, 1] }] }),
    );
    const [scheme] = setup.schemes as [Scheme];
    const bright = { ...scheme, frames: scheme.frames.map((frame) => ({ ...frame, iso: 12800 })) };
    const card = cardOf({ ...setup, schemes: [bright] }, bright);
    const burnt = card.cautions.find(({ code }) => code === 'burnt');
    const told = (text = '', words: RegExp) => Number(words.exec(text)?.[1]);
    const over = told(burnt?.message, /is ([\d.]+) stops over mid-grey/) - limits.burntStops;
    // both are written in tenths
    expect(Math.abs(told(burnt?.short, /burns by ([\d.]+) stops/) - over)).toBeLessThan(0.11);
    expect(cautionTexts(card.cautions).join(' ')).toContain(`row 1: ${burnt?.short}.`);
  });
});
