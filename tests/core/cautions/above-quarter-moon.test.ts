import { describe, expect, it } from 'vitest';
import { blackGround, boxAt, cautionsFor, cautionsOfSetup, find, still } from '../support/cautions.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

/** A lamp on a stand, 20 m from a small wall that it gives so many lux; lit for 20 s of 20. */
const standing = (lux: number, pass: object = {}, frame: object = {}): OnePass => ({
  camera: { position: [3, -8, 1.5], aim: [0, 0, 1] },
  ground: blackGround,
  lamp: { diameterMm: 2, lowestLevelPercent: 0.1, output: { from: 'peak-candela', candela: lux * 20 ** 2 } },
  pass: { ...still([0, -20, 1], [0, 0, 1]), held: 'stand', off: 20, ...pass },
  frame: { aperture: 2.8, iso: 3200, seconds: 20, focusMetres: 8, ...frame },
  subjects: [boxAt('wall', [0, 0.5, 0], [1, 1, 2])],
});

// quarter moon, 0.01 to 0.03 lx: common practice, no published source
describe('above-quarter-moon', () => {
  it.each([
    [0.0297, false],
    [0.0303, true],
  ])('%d lx on the subject: %s', (lux, told) => {
    const caution = find(standing(lux), 'above-quarter-moon');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ severity: 'note', passId: 'pass', frameId: 'frame', limit: 0.03 });
      expect(Math.abs((caution.value ?? 0) / lux - 1)).toBeLessThan(0.005);
      expect(caution.message).toContain('ask locally');
    }
  });
  it.each([
    [0.0297, false],
    [0.0303, true],
  ])(
    'a rim from behind, whose face is dark to the lens, goes by what it puts where it points: %d lx, %s',
    (lux, told) => {
      const behind = { ...still([0, 20, 1], [0, 0, 1]), held: 'stand', off: 20 };
      const caution = find({ ...standing(lux), pass: behind }, 'above-quarter-moon');
      expect(caution !== undefined).toBe(told);
      if (caution) expect(Math.abs((caution.value ?? 0) / lux - 1)).toBeLessThan(0.005);
    },
  );
  it('goes in the hand, and when it is lit for less than half of the frame', () => {
    expect(find(standing(0.05, { held: 'hand' }), 'above-quarter-moon')).toBeUndefined();
    expect(find(standing(0.05, { off: 9.9 }), 'above-quarter-moon')).toBeUndefined();
    expect(find(standing(0.05, { off: 10.1 }), 'above-quarter-moon')).toBeDefined();
  });
  it('goes where the stars have a frame of their own, and is there again in that frame', () => {
    const setup = onePassSetup(standing(0.05));
    const [scheme] = setup.schemes as [(typeof setup.schemes)[number]];
    const [frame] = scheme.frames as [(typeof scheme.frames)[number]];
    const sky = { ...frame, id: 'sky', purpose: 'sky' as const };
    const told = (frames: (typeof scheme.frames)[number][]) =>
      cautionsOfSetup({ ...setup, schemes: [{ ...scheme, frames }] })
        .filter(({ code }) => code === 'above-quarter-moon')
        .map(({ frameId }) => frameId);
    expect(told([{ ...sky, passes: [] }, frame])).toEqual([]);
    expect(told([sky, frame])).toEqual(['sky']);
  });
  it('is not said of a light that is to be weaker anyway', () => {
    const codes = cautionsFor(standing(10)).map(({ code }) => code);
    expect(codes).toContain('burnt');
    expect(codes).not.toContain('above-quarter-moon');
  });
});
