import { describe, expect, it } from 'vitest';
import { strategyPlan } from '../../core/readings/strategy-plan.ts';
import type { Scheme } from '../../core/setup/schema/setup.ts';
import { boxAt, still } from '../core/support/cautions.ts';
import { onePassSetup } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Standing lights');
const source = 'common practice, no published source';

/** A bare panel, taken small, of 500 lx at one metre on an 18 % wall square to it, set by the strategy. */
const planned = (distanceMetres: number, settings: object, nightLevelStops: number, lowestLevelPercent = 0) => {
  const setup = onePassSetup({
    camera: { position: [2, -6, 1.5], aim: [0, 0, 1.5] },
    lamp: { diameterMm: 1, output: { from: 'peak-candela', candela: 500 }, lowestLevelPercent },
    // balanced for nothing: levels are of luminance
    pass: { ...still([0, -distanceMetres, 1.5], [0, 0, 1.5]), off: 5 },
    frame: { purpose: 'sky', ...settings },
    subjects: [boxAt('wall', [0, 0.5, 0], [4, 1, 3])],
  });
  const plan = strategyPlan({ ...setup, nightLevelStops }, setup.schemes[0] as Scheme, 'standing');
  const [pass] = plan.passes;
  if (!pass) throw new Error('one pass');
  return pass;
};
const usual = { aperture: 2.8, seconds: 30, iso: 6400 };

describe('a panel of 500 lx at one metre that stays on for the sky', () => {
  // mid-grey at f/2.8, 30 s, ISO 6400 is 0.01 lx on the subject; the trade counts 30 s as 30, and rounds
  it.each([
    [6, 0.07],
    [9, 0.16],
    [12, 0.3],
    [20, 0.8],
    [30, 1.8],
    [50, 5],
    [100, 20],
  ])('%d m away is set to about %d %% for 0.01 lx (a third of a stop)', (distanceMetres, expected) => {
    const { levelPercent: ours, illuminanceLux } = planned(distanceMetres, usual, 0);
    const claim = `level of a 500 lx panel for 0.01 lx at ${distanceMetres} m, f/2.8, 30 s, ISO 6400`;
    check({ id: 'trade 2.2', claim, source, unit: '%', expected, ours, tolerance: { relative: 2 ** (1 / 3) - 1 } });
    expect(illuminanceLux).toBeGreaterThan(0.008);
    expect(illuminanceLux).toBeLessThan(0.0125);
  });

  it('scene S6: a key 90 m away at night level, f/2.8, 20 s, ISO 6400: about 9 % (a third of a stop)', () => {
    const { levelPercent: ours } = planned(90, { ...usual, seconds: 20 }, -1.5);
    const claim = 'key of the natural arch, 500 cd at 90 m, night level, f/2.8, 20 s, ISO 6400';
    check({ id: 'trade S6', claim, source, unit: '%', expected: 9, ours, tolerance: { relative: 2 ** (1 / 3) - 1 } });
  });

  it('scene S6: the accent 6 m away, a quarter of the key, needs 6 to 7 stops under the lowest 1 %', () => {
    const { levelPercent, ndStops } = planned(6, { ...usual, seconds: 20 }, -3.5, 1);
    expect(ndStops).toBeGreaterThanOrEqual(6);
    expect(ndStops).toBeLessThanOrEqual(7);
    expect(levelPercent).toBeGreaterThanOrEqual(1);
    expect(levelPercent).toBeLessThan(2);
  });
});
