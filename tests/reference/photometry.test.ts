import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { beamDistanceFromPeak, peakFromBeamDistance } from '../../core/photometry/beam.ts';
import { seenEmitter } from '../../core/photometry/seen-emitter.ts';
import { lamp } from '../../core/setup/schema/lamp.ts';
import { meter } from '../../core/trace/meter.ts';
import { radiansFromDegrees } from '../../core/units/angle.ts';
import { emitterOf, fluxOf } from '../../core/world/lamp-light.ts';
import { relativeError } from '../core/support/errors.ts';
import { stageWith, standing } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import { pointIlluminance } from './support/closed-forms.ts';
import { candela, element, panel, thousandLumens, tube } from './support/lamps.ts';

// Rows 1.1 of the check values but for beams, which have a file of their own.
const { check } = accuracySection('Photometry');
const stage = stageWith();
const firstPrinciples = 'first principles, computed';

describe('point sources', () => {
  it.each([
    [5, 400],
    [10, 100],
    [20, 25],
    [50, 4],
  ])(
    '1.1a: 10 000 cd at %d m square on gives %d lx (rel 1e-15), and so it is metered (rel 1e-12)',
    (metres, expected) => {
      const row = { id: '1.1a', source: `inverse square law: ${firstPrinciples}`, unit: 'lx', expected };
      const claim = `10 000 cd square on from ${metres} m`;
      const ours = pointIlluminance(10_000, 1, metres);
      check({ ...row, claim: `${claim}, closed form`, ours, tolerance: { relative: 1e-15 } });
      const torch = thousandLumens({
        kind: 'torch',
        output: { from: 'peak-candela', candela: 10_000 },
        beam: { shape: 'open' },
      });
      const place = standing([0, 10, metres], element, emitterOf(torch));
      const metered = fluxOf(torch) * meter(stage, place, element, [0, 0, 1], 1);
      check({ ...row, claim: `${claim}, metered`, ours: metered, tolerance: { relative: 1e-12 } });
    },
  );

  it('1.1b: 10 000 cd 2 m up gives 426.692 lx on the floor 3 m away (abs 5e-4 lx, its rounding)', () => {
    const row = { id: '1.1b', source: `I h / r^3: ${firstPrinciples}`, unit: 'lx', expected: 426.692 };
    const claim = '10 000 cd 2 m up, on the floor 3 m away';
    const r = Math.hypot(3, 2);
    const ours = pointIlluminance(10_000, 2 / r, r);
    check({ ...row, claim: `${claim}, closed form`, ours, tolerance: { absolute: 5e-4 } });
    const point = thousandLumens({ kind: 'point', output: { from: 'peak-candela', candela: 10_000 } });
    const place = standing([0, 2, 0], [0, 0, 0], emitterOf(point));
    const metered = fluxOf(point) * meter(stage, place, [3, 0, 0], [0, 1, 0], 1);
    check({ ...row, claim: `${claim}, metered`, ours: metered, tolerance: { absolute: 5e-4 } });
  });

  it.each([
    ['lantern', 0],
    ['lantern', 75],
    ['point', 20],
    ['point', 160],
  ])('1.1c: an even %s of 1000 lm gives 79.5775 cd at %d degrees off its axis (rel 1e-6)', (kind, degrees) => {
    check({
      id: '1.1c',
      claim: `${kind} of 1000 lm, ${degrees} degrees off its axis`,
      source: `flux / 4 pi: ${firstPrinciples}`,
      unit: 'cd',
      expected: 79.5775,
      ours: candela(thousandLumens({ kind }), radiansFromDegrees(degrees)),
      tolerance: { relative: 1e-6 },
    });
  });
});

describe('flat and long Lambertian lamps', () => {
  it('1.1g, 1.2k: a panel 0.6 x 0.6 m of 1000 lm gives 318.310 cd, and shows 884.194 cd/m2 from anywhere (rel 2e-6)', () => {
    const tolerance = { relative: 2e-6 };
    const flat = thousandLumens({ kind: 'panel', widthMm: 600, heightMm: 600 });
    check({
      id: '1.1g',
      claim: 'panel of 1000 lm, on its axis',
      source: `flux / pi: ${firstPrinciples}`,
      unit: 'cd',
      expected: 318.31,
      ours: candela(flat, 0),
      tolerance,
    });
    for (const eye of [
      [0, 0, 3],
      [2, 0, 3],
      [5, 1, 0.7],
    ] as const) {
      const r = Math.hypot(...eye);
      const toLamp: Vec3 = [-eye[0] / r, -eye[1] / r, -eye[2] / r];
      const seen = seenEmitter(panel(0.6, 0.6), { position: [0, 0, 0], axis: [0, 0, 1] }, eye, toLamp);
      check({
        id: '1.2k',
        claim: `luminance of a panel 0.6 x 0.6 m of 1000 lm, seen from (${eye.join(', ')})`,
        source: `flux / (pi area): ${firstPrinciples}`,
        unit: 'cd/m2',
        expected: 884.194,
        ours: 1000 * (seen?.luminancePerLumen ?? 0),
        tolerance,
      });
    }
  });

  it('1.1h: a tube that gives 1 cd square to it sends 9.8696 lm: as it is rated (rel 1e-5) and by far samples (0.5 %)', () => {
    const row = {
      id: '1.1h',
      source: `pi^2 times the intensity: ${firstPrinciples}`,
      unit: 'lm',
      expected: 9.8696,
    };
    const output = { from: 'peak-candela', candela: 1 };
    const rated = fluxOf(thousandLumens({ kind: 'tube', lengthMm: 1000, output }));
    check({ ...row, claim: 'tube of 1 cd square to it, rated', ours: rated, tolerance: { relative: 1e-5 } });
    const [away, toward]: [Vec3, Vec3] = [
      [0, 10, 100],
      [0, 0, 1],
    ];
    const perLumen = meter(stage, standing(away, element, tube(1, 0.015)), element, toward, 16384) * 100 ** 2;
    check({ ...row, claim: 'tube of 1 cd square to it, sampled', ours: 1 / perLumen, tolerance: { relative: 0.005 } });
  });
});

describe('beam distance', () => {
  const source = 'ANSI/PLATO FL 1-2019: 0.25 lx, after public summaries';

  it.each([
    [100, 20],
    [1000, 63.25],
    [10_000, 200],
    [50_000, 447.2],
    [100_000, 632.5],
  ])(
    '1.1i: %d cd have a beam distance of %d m (abs 0.05 m, the table’s rounding) and back (rel 1e-12)',
    (intensity, expected) => {
      check({
        id: '1.1i',
        claim: `beam distance of ${intensity} cd`,
        source,
        unit: 'm',
        expected,
        ours: beamDistanceFromPeak(intensity),
        tolerance: { absolute: 0.05 },
      });
      expect(relativeError(peakFromBeamDistance(beamDistanceFromPeak(intensity)), intensity)).toBeLessThanOrEqual(
        1e-12,
      );
    },
  );

  it.each([{ shape: 'open' }, { shape: 'flood', degrees: 20 }, { shape: 'spot', beamDegrees: 8 }])(
    '1.1i: a torch known by its beam distance of 200 m has 10 000 cd in its middle, whatever its beam: %o (rel 1e-9)',
    (beam) => {
      const output = { from: 'beam-distance', distanceMetres: 200 };
      check({
        id: '1.1i',
        claim: `middle of a torch rated 200 m, ${beam.shape} beam`,
        source,
        unit: 'cd',
        expected: 10_000,
        ours: candela(lamp.parse({ kind: 'torch', id: 'lamp', name: 'Lamp', output, beam }), 0),
        tolerance: { relative: 1e-9 },
      });
    },
  );
});
