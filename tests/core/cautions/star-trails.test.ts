import { describe, expect, it } from 'vitest';
import { cautionsOfSetup, find, still } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';

const camera = { position: [0, -6, 1.5], aim: [0, 0, 1.5], focalLengthMm: 24 };
const pass = still([3, -4, 1.5], [0, 20, 0]);
const trails = (seconds: number, frame: object = { purpose: 'sky' }) =>
  find({ camera, pass, frame: { ...frame, seconds } }, 'star-trails');

// 500 rule (common practice, no published source): 500 / 24 = 20.83 s; a third of a stop past it 26.25 s
describe('star-trails', () => {
  it.each([
    [26.2, false],
    [26.3, true],
    [120, true],
  ])('a sky frame of %d s at 24 mm: %s', (seconds, told) => {
    expect(trails(seconds) !== undefined).toBe(told);
  });
  it('says how long the lines are: f w t / p (checkvalues.md 6b), 24 mm, 6 um, 120 s: 35.0 pixels', () => {
    const caution = trails(120);
    expect(caution?.value).toBeCloseTo((0.024 * 7.292116e-5 * 120) / 6e-6, 3);
    expect(caution?.message).toContain('35 pixels');
    expect(caution?.message).toContain('20 s (500 rule)');
    expect(caution).toMatchObject({ severity: 'note', frameId: 'frame' });
  });
  it('gives tenths of a second under three: 500 / 200 is 2.5 s with a lens of 200 mm', () => {
    const long = { ...camera, focalLengthMm: 200 };
    const caution = find({ camera: long, pass, frame: { purpose: 'sky', seconds: 30 } }, 'star-trails');
    expect(caution?.message).toContain('2.5 s (500 rule)');
  });
  it('holds for the only frame of a scheme whatever it is for, and not for a painted one beside a sky frame', () => {
    expect(trails(60, { purpose: 'painted' })).toBeDefined();
    const setup = onePassSetup({ camera, pass, frame: { purpose: 'painted', seconds: 60 } });
    const [scheme] = setup.schemes as [(typeof setup.schemes)[number]];
    const [painted] = scheme.frames as [(typeof scheme.frames)[number]];
    const sky = { ...painted, id: 'sky', purpose: 'sky' as const, seconds: 13, passes: [] };
    const codesWith = (frames: (typeof scheme.frames)[number][]) =>
      cautionsOfSetup({ ...setup, schemes: [{ ...scheme, frames }] }).filter(({ code }) => code === 'star-trails');
    expect(codesWith([sky, painted])).toEqual([]);
    // many long frames are told once
    expect(codesWith([{ ...sky, seconds: 60 }, { ...sky, id: 'more', seconds: 60 }, painted])).toHaveLength(1);
  });
});
