import { describe, expect, it } from 'vitest';
import { focusStack } from '../../../core/readings/focus-plan.ts';
import { nearestSeen } from '../../../core/readings/nearest-seen.ts';
import type { Camera, Scheme } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { boxAt } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';

const setupOf = (camera: object, subjects: readonly object[] = []) =>
  onePassSetup({
    camera: { position: [0, 0, 1.5], aim: [0, 10, 1.5], ...camera },
    pass: { waypoints: [{ position: [3, 0, 1], aim: [0, 8, 1] }] },
    subjects,
  });
const lens = setupOf({ focalLengthMm: 50 }).camera as Camera;

describe('focusStack', () => {
  it('from 1 m to infinity at 50 mm f/8 takes 6 frames without overlap: (H/2)(1/near - 1/far) = 5.21 (checkvalues 4i)', () => {
    const plan = focusStack(lens, 8, { nearestMetres: 1, farthestMetres: null, overlapShare: 0 });
    expect(plan.steps).toHaveLength(6);
    expect(plan.complete).toBe(true);
    expect(plan.steps[0]?.nearMetres).toBeLessThanOrEqual(1 + 1e-9);
    expect(plan.steps.at(-1)?.farMetres).toBeNull();
  });

  it.each([0, 0.1, 0.3, 0.6])(
    'joins without gaps, each begun before the one before ends (overlap %d)',
    (overlapShare) => {
      const { steps } = focusStack(lens, 8, { nearestMetres: 1, farthestMetres: null, overlapShare });
      for (const [i, step] of steps.slice(1).entries())
        expect(step.nearMetres).toBeLessThanOrEqual((steps[i]?.farMetres ?? 0) + 1e-9);
    },
  );

  it('takes more frames for more overlap and a wider aperture, one for what is sharp anyway, none too near', () => {
    const count = (aperture: number, overlapShare: number, nearestMetres = 1) =>
      focusStack(lens, aperture, { nearestMetres, farthestMetres: null, overlapShare }).steps.length;
    expect(count(8, 0.5)).toBeGreaterThan(count(8, 0));
    expect(count(5.6, 0)).toBeGreaterThan(count(8, 0));
    expect(count(8, 0, 6)).toBe(1);
    expect(count(8, 0, 0.05)).toBe(0);
  });
});

describe('nearestSeen', () => {
  it('tells ground and subjects, nearest first, along the axis (to a cell of the picture)', () => {
    // 24 mm high at 50 mm: the lower edge looks 12/50 down, and meets the ground 1.5 / (12/50) = 6.25 m off
    const subjects = [boxAt('far', [3, 20.5, 0], [2, 1, 3]), boxAt('near', [-2, 9.5, 0], [2, 1, 3])];
    const setup = setupOf({ focalLengthMm: 50 }, subjects);
    const seen = nearestSeen(buildWorld(setup, setup.schemes[0] as Scheme));
    expect(seen.map(({ name }) => name)).toEqual(['Ground', 'near', 'far']);
    expect(seen.map(({ subjectId }) => subjectId)).toEqual([null, 'near', 'far']);
    expect(seen[0]?.metres).toBeCloseTo(6.25, 6);
    expect(seen[1]?.metres).toBeCloseTo(9, 6);
    expect(seen[2]?.metres).toBeCloseTo(20, 6);
  });
});
