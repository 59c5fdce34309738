import { describe, expect, it } from 'vitest';
import { changeWords } from '../../../app/web/nightrun/change-words.ts';
import { frameWords, goneWords, standWords } from '../../../app/web/nightrun/run-words.ts';
import type { CardRow } from '../../../core/card/card-row.ts';
import { goingLimits } from '../../../core/card/going-limits.ts';
import { afterVerdict, type Going, type Verdict } from '../../../core/card/stop-rule-steps.ts';
import { cardOf, passFrom, stoneSetup } from '../../core/card/card-setups.ts';

const card = cardOf(stoneSetup(passFrom('side', 4, 6, 2.1, { on: 0, off: 8 })));
const row = card.rows[0] as CardRow;
const planned: Going = { seconds: 8, distanceTimes: 1, hoursMoved: 0, heightTimes: 1, levelTimes: 1 };

/** What is said of a verdict, so many times over; the last. */
const said = (verdict: Verdict, times = 1, of = card, from = planned) => {
  const its = of.rows[0] as CardRow;
  let [going, words] = [from, ''];
  for (let i = 0; i < times; i++) {
    const next = afterVerdict(going, verdict, goingLimits(of, its, going));
    words = changeWords(of, its, going, verdict, next);
    going = next;
  }
  return words;
};

describe('what the phone says of a verdict', () => {
  it('too dark: why the count is not doubled, then what else helps', () => {
    // 0.75 m a pace: 6 m and, aimed 1.1 m lower, 4.3 m away
    expect(said('too-dark')).toMatch(/^Too dark: 16 s don’t fit in the 10 s shutter: go nearer, to 6 paces\./);
    expect(said('too-dark', 9)).toBe(
      'Too dark: 16 s don’t fit in the 10 s shutter, and nearer is no use: for the whole frame, raise the ISO or open the aperture.',
    );
    const dimmed = cardOf(
      stoneSetup(passFrom('dimmed', 4, 6, 1, { on: 0, off: 8, levelPercent: 50, cloth: { stops: 1 } })),
    );
    expect(said('too-dark', 9, dimmed)).toContain(
      'turn the lamp up, or take the cloth off, or for the whole frame, raise the ISO',
    );
  });

  it('too bright: halves, then turns down in the card’s words, then steps back and says why, then what else helps', () => {
    expect(said('too-bright')).toBe('Too bright: now count 4 s.');
    expect(said('too-bright', 2)).toBe('Too bright: now count 2 s.');
    const lowest20 = { ...card, rows: [{ ...row, lowestLevelPercent: 20 }] };
    expect(said('too-bright', 3, lowest20)).toBe('Too bright: 1 s is too short to count: turn the lamp down, to 50 %.');
    expect(said('too-bright', 4, lowest20)).toMatch(/turn the lamp down, to 25 %\.$/);
    // 6 m and, aimed 1.1 m lower, 8.6 m away
    expect(said('too-bright', 5, lowest20)).toBe(
      'Too bright: 1 s is too short to count, and half its level is under its lowest, 20 %: step back, to 11 paces.',
    );
    const fixed = { ...card, rows: [{ ...row, lowestLevelPercent: 100 }] };
    expect(said('too-bright', 3, fixed)).toBe(
      'Too bright: 1 s is too short to count, and the lamp has no lower level: step back, to 11 paces.',
    );
    expect(said('too-bright', 9, fixed)).toMatch(/and farther is no use: put more cloth before the lamp/);
  });

  it('flat: one thing at a time, where to, and that nothing is left where nothing is', () => {
    expect(said('flat')).toBe('Flat: lower the lamp, to hip, 1.1 m. Stay at 4:00.');
    expect(said('flat', 2)).toBe('Flat: move to 3:00. Stay as high as it is.');
    expect(said('flat', 3)).toBe('Flat: lower the lamp, to knee, 0.53 m. Stay at 3:00.');
    expect(said('flat', 16)).toBe(
      'Flat: nothing is left to lower, and farther round it would be a back light. Stay as you are.',
    );
  });

  it('says when the new place is before the subject, in the picture', () => {
    const front = cardOf(stoneSetup(passFrom('front', 4.4, 10, 1, { on: 0, off: 8 })));
    expect(said('too-dark', 1, front)).not.toContain('the camera sees you');
    expect(said('too-dark', 3, front)).toContain('There the camera sees you, in front of the subject.');
  });
});

describe('the pass and the log', () => {
  it('says heights with metres, and all that the camera is set to', () => {
    expect(standWords(card, row, planned)).toBe('4:00 · 8 paces (6.0 m) · overhead, 2.1 m');
    const [, settings] = frameWords(card, row);
    for (const word of ['shutter 10 s', 'f/', 'ISO ', ' K', 'focus ', 'delay ']) expect(settings).toContain(word);
  });

  it('says of a pass of the log where it was; in words against the plan where that is gone', () => {
    const run = { ...planned, distanceTimes: Math.SQRT1_2, hoursMoved: -1, heightTimes: 0.5, frameId: row.frameId };
    expect(goneWords(card, { ...run, passId: row.passId })).toMatch(/^3:00 · 6 paces \(4\.\d m\) · hip, 1\.1 m$/);
    const factors =
      '0.7 times as far from what it lit as planned · 1 hour back round the clock · 0.50 times as high as planned';
    expect(goneWords(card, { ...run, passId: 'gone' })).toBe(factors);
    expect(goneWords(null, { ...run, passId: row.passId })).toBe(factors);
    const dimmed = { ...run, levelTimes: 0.25 };
    expect(goneWords(card, { ...dimmed, passId: row.passId })).toMatch(/hip, 1\.1 m · lamp 25 %$/);
    expect(goneWords(null, { ...dimmed, passId: row.passId })).toBe(`${factors} · 0.25 times the planned level`);
  });
});
