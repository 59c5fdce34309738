import { describe, expect, it } from 'vitest';
import type { CardRow } from '../../../core/card/card-row.ts';
import { dueCue } from '../../../core/card/count-cues.ts';
import { clockCues, clockState, type FrameClock, frameClock } from '../../../core/card/frame-clock.ts';
import { runOf } from '../../../core/card/tonight.ts';
import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

const pass = { rowNumber: 1, onSeconds: 6, seconds: 2, strokes: 1 };
const clock: FrameClock = { delaySeconds: 10, shutterSeconds: 20, passes: [pass] };
const told = (of: FrameClock) => clockCues(of).map(({ at, word }) => `${at} ${word}`);

describe('clockCues: from the tap, with the self-timer of the camera', () => {
  it('counts down to the opening, then to the lamp, counts the lamp, and says when the shutter closes', () => {
    expect(told(clock)).toEqual([
      '7 three',
      '8 two',
      '9 one',
      '10 open',
      '13 three',
      '14 two',
      '15 one',
      '16 lamp on',
      '17 1',
      '18 off',
      '30 closed',
    ]);
  });

  it('says together what falls together: a lamp that is on from the opening to the closing', () => {
    expect(told({ delaySeconds: 2, shutterSeconds: 2, passes: [{ ...pass, onSeconds: 0 }] })).toEqual([
      '0 two',
      '1 one',
      '2 open, lamp on',
      '3 1',
      '4 off, closed',
    ]);
  });

  it('counts down to a second lamp only as long as the first is off; a frame without passes opens and closes', () => {
    const second = { ...pass, rowNumber: 2, onSeconds: 9.5 };
    expect(told({ ...clock, delaySeconds: 0, passes: [pass, second] }).slice(-7)).toEqual([
      '7 1',
      '8 off',
      '8.5 one',
      '9.5 lamp on',
      '10.5 1',
      '11.5 off',
      '20 closed',
    ]);
    expect(told({ delaySeconds: 0, shutterSeconds: 15, passes: [] })).toEqual(['0 open', '15 closed']);
  });

  it('is never behind: in order, and after a sleep only the newest is said', () => {
    const cues = clockCues(clock);
    expect(cues.map(({ at }) => at)).toEqual(cues.map(({ at }) => at).sort((a, b) => a - b));
    expect(dueCue(cues, 9.5, 18.2)?.word).toBe('off');
  });
});

describe('clockState: by the clock, not by ticks', () => {
  it('is right at any moment', () => {
    const next = { rowNumber: 1, stroke: 1 };
    expect(clockState(clock, 0)).toEqual({ ...next, phase: 'delay', shown: 10, lampSeconds: 0 });
    expect(clockState(clock, 10)).toEqual({ ...next, phase: 'open', shown: 0, lampSeconds: 6 });
    expect(clockState(clock, 14.5)).toEqual({ ...next, phase: 'open', shown: 4, lampSeconds: 2 });
    expect(clockState(clock, 17.5)).toEqual({ ...next, phase: 'on', shown: 7, lampSeconds: 1 });
    expect(clockState(clock, 18)).toEqual({ phase: 'open', shown: 8, rowNumber: null, lampSeconds: 0, stroke: 1 });
    expect(clockState(clock, 9999)).toMatchObject({ phase: 'closed', shown: 20, rowNumber: null });
  });
});

describe('frameClock', () => {
  const card = cardOf(stoneSetup(passFrom('a', 3, 4, 1, { on: 1, off: 3 }), passFrom('b', 9, 4, 1, { on: 5, off: 7 })));
  const times = (of: FrameClock) => of.passes.map(({ onSeconds, seconds }) => [onSeconds, seconds]);

  it('goes by the plan: lamp times from the opening, delay and shutter of the frame', () => {
    const planned = frameClock(card, 1, null);
    expect(times(planned)).toEqual([
      [1, 2],
      [5, 2],
    ]);
    expect(planned.shutterSeconds).toBe(10);
    expect(planned.delaySeconds).toBe(card.frames[0]?.delaySeconds);
  });

  it('leaves the way to the next pass as long as planned where a count was doubled', () => {
    const [row] = card.rows;
    if (!row) throw new Error('no pass');
    const going = { seconds: 2, distanceTimes: 1, hoursMoved: 0, heightTimes: 1, levelTimes: 1 };
    const run = runOf(card, row, going, 'too-dark', '2026-10-12T22:30:00');
    const night = { id: 'n', startedAt: run.at, schemeId: 's', schemeName: 's', note: '', runs: [run], photos: [] };
    expect(times(frameClock(card, 1, night))).toEqual([
      [1, 4],
      [7, 2],
    ]);
  });

  describe('after a run of the first pass that took longer than planned', () => {
    const timesAfter = (seconds: number, second: object) => {
      const planned = cardOf(
        stoneSetup(passFrom('a', 3, 4, 1, { on: 1, off: 3 }), passFrom('b', 9, 4, 1, { on: 5, off: 7, ...second })),
      );
      const going = { seconds, distanceTimes: 1, hoursMoved: 0, heightTimes: 1, levelTimes: 1 };
      const run = runOf(planned, planned.rows[0] as CardRow, going, 'good', '2026-10-12T22:30:00');
      const night = { id: 'n', startedAt: run.at, schemeId: 's', schemeName: 's', note: '', runs: [run], photos: [] };
      return times(frameClock(planned, 1, night));
    };

    it('a lamp on a stand goes on when it was planned to: nobody walks there', () => {
      expect(timesAfter(4, { held: 'stand' })).toEqual([
        [1, 4],
        [5, 2],
      ]);
    });

    it('cuts off what is past the shutter, and leaves out what would begin after it', () => {
      // 3.5 s longer: the second begins at 8.5 s, and the shutter closes at 10 s
      expect(timesAfter(5.5, {})).toEqual([
        [1, 5.5],
        [8.5, 1.5],
      ]);
      expect(timesAfter(7.5, {})).toEqual([[1, 7.5]]);
    });
  });

  it('knows each of like frames that stand together on the card by its own number', () => {
    const setup = stoneSetup(passFrom('a', 3, 4, 1));
    const [scheme] = setup.schemes as [Scheme];
    const [frame] = scheme.frames as [Frame];
    const sky = { ...frame, passes: [], seconds: 15, delaySeconds: 1 };
    const frames = [{ ...sky, id: 's1' }, { ...sky, id: 's2' }, frame];
    const three = cardOf({ ...setup, schemes: [{ ...scheme, frames }] });
    const clocks = [1, 2, 3].map((number) => frameClock(three, number, null));
    expect(clocks.map(({ shutterSeconds, delaySeconds }) => [shutterSeconds, delaySeconds])).toEqual([
      [15, 1],
      [15, 1],
      [10, 2],
    ]);
  });
});
