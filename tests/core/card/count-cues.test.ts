import { describe, expect, it } from 'vitest';
import { countCues, countState, dueCue } from '../../../core/card/count-cues.ts';

const plan = { leadInSeconds: 3, seconds: 5, strokes: 1 };
const told = (cues: ReturnType<typeof countCues>) => cues.map(({ at, word }) => `${at} ${word}`);

describe('countCues', () => {
  it('counts down, says on, each second, and off', () => {
    expect(told(countCues(plan))).toEqual(['0 three', '1 two', '2 one', '3 on', '4 1', '5 2', '6 3', '7 4', '8 off']);
  });

  it('counts a long lead-in down second by second too', () => {
    const words = countCues({ leadInSeconds: 7, seconds: 1, strokes: 1 }).map(({ word }) => word);
    expect(words).toEqual(['7', '6', 'five', 'four', 'three', 'two', 'one', 'on', 'off']);
  });

  it('says off at the count, whole or not, and never a second on top of it', () => {
    expect(told(countCues({ leadInSeconds: 1, seconds: 1.6, strokes: 1 }))).toEqual([
      '0 one',
      '1 on',
      '2 1',
      '2.6 off',
    ]);
    expect(told(countCues({ leadInSeconds: 0, seconds: 0.5, strokes: 1 }))).toEqual(['0 on', '0.5 off']);
  });

  it('calls each further stroke as it begins, in place of a second that falls on it', () => {
    expect(told(countCues({ leadInSeconds: 0, seconds: 4, strokes: 2 }))).toEqual([
      '0 on',
      '1 1',
      '2 stroke 2',
      '3 3',
      '4 off',
    ]);
    const strokes = countCues({ leadInSeconds: 0, seconds: 10, strokes: 4 }).filter(({ kind }) => kind === 'stroke');
    expect(strokes.map(({ at }) => at)).toEqual([2.5, 5, 7.5]);
  });
});

describe('countState and dueCue: by the clock, not by ticks', () => {
  it('is right at any moment, whether anybody looked before or not', () => {
    expect(countState(plan, 0)).toEqual({ phase: 'lead-in', shown: 3, stroke: 1 });
    expect(countState(plan, 2.2)).toEqual({ phase: 'lead-in', shown: 1, stroke: 1 });
    expect(countState(plan, 3)).toEqual({ phase: 'on', shown: 0, stroke: 1 });
    expect(countState(plan, 6.9)).toEqual({ phase: 'on', shown: 3, stroke: 1 });
    expect(countState(plan, 3600)).toEqual({ phase: 'over', shown: 5, stroke: 1 });
    expect(countState({ ...plan, strokes: 2 }, 5.6).stroke).toBe(2);
  });

  it('with a fake clock that looks every twentieth of a second, each cue is said once and within that', () => {
    const cues = countCues({ ...plan, strokes: 2 });
    const said: string[] = [];
    let before = -1;
    for (let i = 0; i <= 200; i++) {
      const now = i * 0.05;
      const cue = dueCue(cues, before, now);
      before = now;
      if (!cue) continue;
      said.push(cue.word);
      expect(now - cue.at).toBeLessThan(0.05 + 1e-9);
    }
    expect(said).toEqual(cues.map(({ word }) => word));
  });

  it('after the page slept, only the newest of what it missed is said', () => {
    const cues = countCues(plan);
    expect(dueCue(cues, 0.1, 6.5)?.word).toBe('3');
    expect(dueCue(cues, 6.5, 6.9)).toBeNull();
    expect(dueCue(cues, 6.9, 900)?.word).toBe('off');
    expect(dueCue(cues, 900, 901)).toBeNull();
  });
});
