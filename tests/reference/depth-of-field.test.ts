import { describe, expect, it } from 'vitest';
import { cocOfSensorMm } from '../../core/camera/circle-of-confusion.ts';
import { depthLimits, hyperfocalMm } from '../../core/camera/depth-of-field.ts';
import { focusSteps } from '../../core/camera/focus-steps.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Depth of field');

/** Textbook thin-lens formulas; the numbers are computed from them, to the places given. */
const thinLens = 'thin-lens formula; number computed';
const millimetresPerFoot = 304.8;

describe('hyperfocal distance', () => {
  const course = 'US Army correspondence course SS0507, Learning Event 10';
  const [focalLengthMm, cocMm] = [2 * 25.4, 0.002 * 25.4];

  it('4a: a printed example in feet (abs 0.05 ft, its rounding)', () => {
    // the course leaves the focal length out of its formula
    const ours = (hyperfocalMm(focalLengthMm, 8, cocMm) - focalLengthMm) / millimetresPerFoot;
    const claim = 'hyperfocal distance less f, 2 in lens at f/8, c 0.002 in';
    check({ id: '4a', claim, source: course, unit: 'ft', expected: 20.8, ours, tolerance: { absolute: 0.05 } });
  });

  it('4a: its near limit (abs 0.05 ft of rounding and 0.083 ft, half the focal length that the course leaves out)', () => {
    const focusMm = hyperfocalMm(focalLengthMm, 8, cocMm);
    const ours = depthLimits(focalLengthMm, 8, cocMm, focusMm).nearMm / millimetresPerFoot;
    const claim = 'near limit focused there; the source leaves out f, 0.08 ft';
    check({ id: '4a', claim, source: course, unit: 'ft', expected: 10.4, ours, tolerance: { absolute: 0.133 } });
  });

  it.each([
    ['4b', 50, 8, 10466.7, 0.1],
    ['4d', 20, 2.8, 4781.9, 0.01],
    ['4e', 14, 2.8, 2347.33, 0.01],
    ['4f', 24, 4, 4824, 0.01],
    ['4g', 35, 2, 20451.67, 0.01],
  ] as const)('%s: %d mm f/%d, c 0.03 mm: %d mm (abs %d mm)', (id, focalLengthMm, fNumber, expected, absolute) => {
    const claim = `hyperfocal distance, ${focalLengthMm} mm f/${fNumber}, c 0.030 mm`;
    const ours = hyperfocalMm(focalLengthMm, fNumber, 0.03);
    check({ id, claim, source: thinLens, unit: 'mm', expected, ours, tolerance: { absolute } });
  });

  it('4b: without the focal length, 10416.7 mm (abs 0.1 mm)', () => {
    const ours = hyperfocalMm(50, 8, 0.03) - 50;
    const claim = 'hyperfocal distance less f, 50 mm f/8, c 0.030 mm';
    check({ id: '4b', claim, source: thinLens, unit: 'mm', expected: 10416.7, ours, tolerance: { absolute: 0.1 } });
  });

  // trade notes 2.5: [mm, f-number, strict and loose hyperfocal distance in m, half of the last digit told]
  it.each([
    [14, 2.8, 4.7, 2.4, 0.06],
    [20, 2.8, 9.5, 4.8, 0.06],
    [24, 2.8, 13.7, 6.9, 0.06],
    [24, 4, 9.6, 4.8, 0.06],
    [24, 8, 4.8, 2.4, 0.06],
    [35, 2.8, 29, 15, 0.5],
  ])(
    'trade: %d mm f/%d is told as %d m strict and %d m loose (abs %d m)',
    (focalLengthMm, fNumber, strict, loose, absolute) => {
      for (const [cocMm, expected] of [
        [0.015, strict],
        [0.03, loose],
      ] as const) {
        const ours = hyperfocalMm(focalLengthMm, fNumber, cocMm) / 1000;
        const claim = `hyperfocal distance as the trade tells it, ${focalLengthMm} mm f/${fNumber}, c ${cocMm} mm`;
        const source = 'common practice, no published source';
        check({ id: 'trade 2.5', claim, source, unit: 'm', expected, ours, tolerance: { absolute } });
      }
    },
  );
});

describe('circle of confusion', () => {
  it('of a 36 x 24 mm sensor is 0.030 mm (abs 5e-4 mm, its rounding)', () => {
    const ours = cocOfSensorMm(36, 24);
    const claim = 'circle of confusion of a 36 x 24 mm sensor, diagonal/1442';
    const source = 'convention, from memory';
    check({ id: '4', claim, source, unit: 'mm', expected: 0.03, ours, tolerance: { absolute: 5e-4 } });
  });
});

describe('limits of the depth of field', () => {
  it.each([
    ['4c', 50, 8, 3000, 2337.91, 4185.27],
    ['4d', 20, 2.8, 3000, 1845.25, 8017.1],
    ['4f', 24, 4, 2000, 1416.77, 3399.43],
    ['4g', 35, 2, 5000, 4021.93, 6606.62],
  ] as const)(
    '%s: %d mm f/%d at %d mm: %d to %d mm (abs 0.01 mm)',
    (id, focalLengthMm, fNumber, focusMm, near, far) => {
      const { nearMm, farMm } = depthLimits(focalLengthMm, fNumber, 0.03, focusMm);
      const at = `${focalLengthMm} mm f/${fNumber} focused at ${focusMm / 1000} m, c 0.030 mm`;
      const row = { id, source: thinLens, unit: 'mm', tolerance: { absolute: 0.01 } };
      check({ ...row, claim: `near limit, ${at}`, expected: near, ours: nearMm });
      check({ ...row, claim: `far limit, ${at}`, expected: far, ours: farMm });
    },
  );

  it.each([
    ['4d', 20, 2.8, 2390.95],
    ['4e', 14, 2.8, 1173.67],
  ] as const)(
    '%s: %d mm f/%d focused at its hyperfocal distance: from %d mm to infinity (abs 0.01 mm)',
    (id, f, n, expected) => {
      const { nearMm, farMm } = depthLimits(f, n, 0.03, hyperfocalMm(f, n, 0.03));
      const claim = `near limit focused at the hyperfocal distance, ${f} mm f/${n}, c 0.030 mm`;
      check({ id, claim, source: thinLens, unit: 'mm', expected, ours: nearMm, tolerance: { absolute: 0.01 } });
      expect(farMm).toBe(Number.POSITIVE_INFINITY);
    },
  );
});

describe('focus steps, 50 mm f/8, c 0.030 mm', () => {
  const source = 'focus-stack derivation, computed';
  const hyperfocal = hyperfocalMm(50, 8, 0.03);

  it('4i: from 1 m to infinity without overlap takes 6 frames (exact)', () => {
    const lens = { focalLengthMm: 50, fNumber: 8, cocMm: 0.03 };
    const plan = focusSteps({
      ...lens,
      nearestMm: 1000,
      farthestMm: Number.POSITIVE_INFINITY,
      overlapShare: 0,
      maxSteps: 50,
    });
    const claim = 'frames of a focus stack from 1 m to infinity, 50 mm f/8, no overlap';
    const ours = plan.steps.length;
    check({ id: '4i', claim, source, unit: '', expected: 6, ours, tolerance: { absolute: 0 } });
    expect(plan.complete).toBe(true);
  });

  it.each([
    [2, 3488.9, 2623, 5208.3],
    [3, 2093.3, 1750, 2604.2],
    [4, 1495.2, 1313.1, 1736.1],
  ])(
    '4j: step %d of the simple sequence H/(2k-1) lies at %d mm, sharp from %d to %d mm (abs 0.1 mm)',
    (k, focus, near, far) => {
      const focusMm = hyperfocal / (2 * k - 1);
      const { nearMm, farMm } = depthLimits(50, 8, 0.03, focusMm);
      const row = { id: '4j', source: thinLens, unit: 'mm', tolerance: { absolute: 0.1 } };
      check({ ...row, claim: `focus H/${2 * k - 1}, 50 mm f/8`, expected: focus, ours: focusMm });
      check({ ...row, claim: `near limit focused at H/${2 * k - 1}, 50 mm f/8`, expected: near, ours: nearMm });
      check({ ...row, claim: `far limit focused at H/${2 * k - 1}, 50 mm f/8`, expected: far, ours: farMm });
    },
  );

  it('4j: the simple sequence leaves gaps; ours, without overlap, leaves none', () => {
    const simple = (k: number) => depthLimits(50, 8, 0.03, hyperfocal / (2 * k - 1));
    for (const k of [2, 3, 4]) expect(simple(k).farMm).toBeLessThan(simple(k - 1).nearMm);
    const lens = { focalLengthMm: 50, fNumber: 8, cocMm: 0.03 };
    const { steps } = focusSteps({
      ...lens,
      nearestMm: 1000,
      farthestMm: Number.POSITIVE_INFINITY,
      overlapShare: 0,
      maxSteps: 50,
    });
    const gaps = steps.slice(1).filter((step, i) => step.nearMm > (steps[i]?.farMm ?? 0));
    expect(gaps).toEqual([]);
  });
});
