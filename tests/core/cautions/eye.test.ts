import { describe, expect, it } from 'vitest';
import { boxAt, cautionsOfSetup, find, still } from '../support/cautions.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

const camera = { position: [0, -6, 1.5], aim: [0, 0, 1.5] };

/** A thin figure that counts as a person, 1.75 m high at 2 m from the lamp, eyes 0.12 m under its top. */
const figure = { ...boxAt('Ann', [0, 0, 0], [0.01, 0.01, 1.75]), kit: { name: 'person', values: {} } };
const onPerson = (candela: number, subjects: readonly object[] = [figure]): OnePass => ({
  camera,
  lamp: { diameterMm: 2, output: { from: 'peak-candela', candela } },
  pass: still([2, 0, 1.63], [0, 0, 1.63]),
  subjects,
});

// 500 lx: the threshold of IEC/TR 62778 for cold white light, from memory; only where a note begins, no safe distance
describe('eye', () => {
  it.each([
    [1960, false],
    [2040, true],
  ])('%d cd at a person 2 m off: %s', (candela, told) => {
    const caution = find(onPerson(candela), 'eye');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ severity: 'note', passId: 'pass', frameId: 'frame', limit: 500 });
      expect(Math.abs((caution.value ?? 0) / (candela / 4) - 1)).toBeLessThan(0.01);
      expect(caution.message).toContain('“Ann”');
      expect(caution.message).toContain('IEC 62471');
    }
  });
  it('goes when a wall stands between, and when the figure is no person', () => {
    const wall = boxAt('wall', [1, 0, 0], [0.1, 1, 3]);
    expect(find(onPerson(2040, [figure, wall]), 'eye')).toBeUndefined();
    expect(find(onPerson(2040, [boxAt('Ann', [0, 0, 0], [0.01, 0.01, 1.75])]), 'eye')).toBeUndefined();
  });
  it.each([
    [12_400, false],
    [12_600, true],
  ])('without a person a beam of %d cd, 500 lx 5 m away at 12,500: %s', (candela, told) => {
    expect(find(onPerson(candela, []), 'eye') !== undefined).toBe(told);
  });
  it('is told once, of the worst pass', () => {
    const setup = onePassSetup(onPerson(50_000, []));
    const [scheme] = setup.schemes as [(typeof setup.schemes)[number]];
    const [frame] = scheme.frames as [(typeof scheme.frames)[number]];
    const [pass] = frame.passes as [(typeof frame.passes)[number]];
    const passes = [{ ...pass, id: 'weak', levelPercent: 60 }, pass];
    const told = cautionsOfSetup({ ...setup, schemes: [{ ...scheme, frames: [{ ...frame, passes }] }] });
    expect(told.filter(({ code }) => code === 'eye').map(({ passId }) => passId)).toEqual(['pass']);
  });
});
