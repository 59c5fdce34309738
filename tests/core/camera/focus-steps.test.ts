import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthLimits, hyperfocalMm } from '../../../core/camera/depth-of-field.ts';
import { type FocusTask, focusSteps } from '../../../core/camera/focus-steps.ts';

const seed = 4711;
const roomy = 2000;
const infinity = Number.POSITIVE_INFINITY;

const task: fc.Arbitrary<FocusTask> = fc
  .record({
    focalLengthMm: fc.double({ min: 10, max: 200, noNaN: true }),
    fNumber: fc.double({ min: 1.4, max: 22, noNaN: true }),
    cocMm: fc.double({ min: 0.005, max: 0.04, noNaN: true }),
    nearTurns: fc.double({ min: 8, max: 400, noNaN: true }),
    span: fc.oneof(fc.constant(infinity), fc.double({ min: 1, max: 100, noNaN: true })),
    overlapShare: fc.double({ min: 0, max: 0.5, noNaN: true }),
  })
  .map(({ nearTurns, span, ...lens }) => {
    const nearestMm = nearTurns * lens.focalLengthMm;
    return { ...lens, nearestMm, farthestMm: nearestMm * span, maxSteps: roomy };
  });

/** Depth of field in 1/mm: the measure in which all frames of a stack are nearly alike. */
const inverseDepth = ({ nearMm, farMm }: { nearMm: number; farMm: number }) => 1 / nearMm - 1 / farMm;

/** Frames that a patient person needs without overlap: each one focused so that it begins where the last one ended. */
const marchedCount = ({ focalLengthMm: f, fNumber, cocMm, nearestMm, farthestMm }: FocusTask): number => {
  let [count, edgeMm] = [0, nearestMm];
  while (edgeMm < farthestMm) {
    let [low, high] = [1e-12, (1 / f) * (1 - 1e-9)];
    for (let n = 0; n < 60; n++) {
      const middle = (low + high) / 2;
      if (depthLimits(f, fNumber, cocMm, 1 / middle).nearMm > edgeMm) low = middle;
      else high = middle;
    }
    edgeMm = depthLimits(f, fNumber, cocMm, 1 / high).farMm;
    count++;
  }
  return count;
};

describe('focusSteps', () => {
  it(`covers the range without a gap, near to far, each step by thin-lens limits (rel 1e-9, seed ${seed})`, () => {
    fc.assert(
      fc.property(task, (wanted) => {
        const { steps, complete, coveredToMm } = focusSteps(wanted);
        expect(complete).toBe(true);
        expect(steps[0]?.nearMm).toBeLessThanOrEqual(wanted.nearestMm * (1 + 1e-9));
        expect(coveredToMm).toBe(steps.at(-1)?.farMm);
        expect(1 / coveredToMm).toBeLessThanOrEqual((1 / wanted.farthestMm) * (1 + 1e-9) + 1e-15);
        for (const [i, step] of steps.entries()) {
          const { focalLengthMm, fNumber, cocMm } = wanted;
          expect(depthLimits(focalLengthMm, fNumber, cocMm, step.focusMm)).toEqual({
            nearMm: step.nearMm,
            farMm: step.farMm,
          });
          const before = steps[i - 1];
          if (!before) continue;
          expect(step.focusMm).toBeGreaterThan(before.focusMm);
          expect(step.nearMm).toBeLessThanOrEqual(before.farMm * (1 + 1e-9));
        }
      }),
      { seed },
    );
  });

  it(`each step shares at least the asked part of its depth with the next (abs 1e-6 of a depth, seed ${seed})`, () => {
    fc.assert(
      fc.property(task, (wanted) => {
        const { steps } = focusSteps(wanted);
        for (const [i, step] of steps.entries()) {
          const next = steps[i + 1];
          if (!next) break;
          const shared = 1 / next.nearMm - 1 / step.farMm;
          expect(shared / inverseDepth(step)).toBeGreaterThanOrEqual((wanted.overlapShare ?? 0) - 1e-6);
          // a last step that reaches beyond infinity shows only the part before it
          expect(shared / inverseDepth(next)).toBeGreaterThanOrEqual((wanted.overlapShare ?? 0) - 1e-6);
        }
      }),
      { seed },
    );
  });

  it(`without overlap takes as many frames as marching outwards frame by frame (exact count, seed ${seed})`, () => {
    fc.assert(
      fc.property(task, (wanted) => {
        const { steps } = focusSteps({ ...wanted, overlapShare: 0 });
        const marched = marchedCount(wanted);
        // a march that ends within rounding of the far end may go either way
        const tight = { ...wanted, farthestMm: wanted.farthestMm * (1 - 1e-6) };
        if (marchedCount(tight) === marched) expect(steps.length).toBe(marched);
      }),
      { seed },
    );
  });

  it(`with overlap stays within one frame of range over fresh ground a frame (seed ${seed})`, () => {
    fc.assert(
      fc.property(task, (wanted) => {
        const { focalLengthMm: f, fNumber, cocMm, nearestMm, farthestMm, overlapShare = 0.1 } = wanted;
        const count = focusSteps(wanted).steps.length;
        const range = 1 / nearestMm - 1 / farthestMm;
        const deepest = (2 * fNumber * cocMm) / f ** 2;
        // the nearest frame is the shallowest: its depth is (2/K)(1 - f u), with u no more than 1/nearest
        const shallowest = deepest * (1 - f / nearestMm);
        const framesAt = (depth: number) => Math.max(1, 1 + (range - depth) / (depth * (1 - overlapShare)));
        expect(count).toBeGreaterThanOrEqual(framesAt(deepest) - 1e-6);
        expect(count).toBeLessThan(framesAt(shallowest) * (1 + (overlapShare * f) / nearestMm) + 1);
      }),
      { seed },
    );
  });

  const wall: FocusTask = {
    focalLengthMm: 50,
    fNumber: 8,
    cocMm: 0.03,
    nearestMm: 1000,
    farthestMm: infinity,
    maxSteps: 20,
  };

  it('uses its slack: one frame is focused between the ends so that both blur alike, whatever the circle (rel 1e-6)', () => {
    const { steps } = focusSteps({ ...wall, nearestMm: 3000, farthestMm: 4000 });
    expect(steps).toHaveLength(1);
    // both ends blur alike where 1/s is the mean of 1/near and 1/far: blur goes with |1/s - 1/d|
    expect(Math.abs((steps[0]?.focusMm ?? 0) / (2 / (1 / 3000 + 1 / 4000)) - 1)).toBeLessThanOrEqual(1e-6);
  });

  it('a nearest thing beyond the hyperfocal distance takes one frame that holds infinity', () => {
    const far = focusSteps({ ...wall, nearestMm: 3 * hyperfocalMm(50, 8, 0.03) });
    expect(far).toMatchObject({ complete: true, coveredToMm: infinity });
    expect(far.steps).toHaveLength(1);
    expect(focusSteps({ ...wall, nearestMm: infinity }).steps[0]?.focusMm).toBe(infinity);
  });

  it('with too few frames starts at the nearest thing, says that it is not complete and to where it came', () => {
    const all = focusSteps(wall).steps.length;
    const cut = focusSteps({ ...wall, maxSteps: all - 1 });
    expect(cut.complete).toBe(false);
    expect(cut.steps).toHaveLength(all - 1);
    expect(cut.steps[0]?.nearMm).toBeCloseTo(1000, 6);
    expect(cut.coveredToMm).toBe(cut.steps.at(-1)?.farMm);
    expect(cut.coveredToMm).toBeLessThan(infinity);
    expect(focusSteps({ ...wall, maxSteps: all }).complete).toBe(true);
  });

  it('overlaps by a tenth when not told', () => {
    const busy = { ...wall, cocMm: 0.006 };
    expect(focusSteps(busy)).toEqual(focusSteps({ ...busy, overlapShare: 0.1 }));
    expect(focusSteps(busy)).not.toEqual(focusSteps({ ...busy, overlapShare: 0 }));
  });

  it.each([
    [{ nearestMm: 50 }, 'range must lie beyond 50 mm'],
    [{ farthestMm: 999 }, 'near to far: 1000 to 999 mm'],
    [{ overlapShare: 1 }, 'overlap must be in [0, 1)'],
    [{ overlapShare: -0.1 }, 'overlap must be in [0, 1)'],
    [{ maxSteps: 0 }, 'at least one frame'],
    [{ cocMm: 0 }, 'circle of confusion must be above 0'],
    [{ cocMm: 6.25 }, 'below the lens opening'],
  ])('refuses %o', (wrong, words) => {
    expect(() => focusSteps({ ...wall, ...wrong })).toThrow(words);
  });
});
