import { describe, it } from 'vitest';
import { add, type Vec3 } from '../../core/geometry/vec.ts';
import type { Emitter } from '../../core/photometry/emitter.ts';
import { meter } from '../../core/trace/meter.ts';
import { stageWith, standing } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import {
  discFactorOnAxis,
  pointIlluminance,
  rectangleFactorUnderCorner,
  rectangleFactorUpright,
  sphereFactor,
} from './support/closed-forms.ts';
import { barePoint, element, lantern, leaned, north, panel, roundPanel, south, up } from './support/lamps.ts';
import { polygonFactor } from './support/polygon-factor.ts';
import { meanOverSquare } from './support/quadrature.ts';

const { check } = accuracySection('Extended sources');
const stage = stageWith();
const samples = 16384;
const sampledTolerance = { relative: 0.005 };
const above = (offset: Vec3): Vec3 => add(element, offset);

/** Factor F = E / pi L of a lamp of one lumen, L = 1 / (pi area), by our own samples. */
const sampledFactor = (emitter: Emitter, area: number, lamp: Vec3, aim: Vec3, normal: Vec3): number =>
  meter(stage, standing(lamp, aim, emitter), element, normal, samples) * area;

describe('Lambertian disc', () => {
  const source = 'F = 1 / (1 + h^2): I. Martinez (UPM), problem m13_p27';
  it.each([
    [1, 0.5],
    [0.5, 0.2],
    [0.25, 0.0588235],
    [0.2, 0.0384615],
    [0.1, 0.00990099],
  ])(
    '1.2a: R/d = %d gives F = %d: closed form (rel 2e-6, the table’s rounding) and sampled (0.5 %)',
    (ratio, expected) => {
      const row = { id: '1.2a', source, unit: '', expected };
      const claim = `factor of a disc on its axis, R/d = ${ratio}`;
      check({
        ...row,
        claim: `${claim}, closed form`,
        ours: discFactorOnAxis(ratio, 1),
        tolerance: { relative: 2e-6 },
      });
      const ours = sampledFactor(roundPanel(ratio), Math.PI * ratio ** 2, above([0, 1, 0]), element, up);
      check({ ...row, claim: `${claim}, sampled`, ours, tolerance: sampledTolerance });
    },
  );

  it.each([20, 45, 70])(
    '1.2b: an element leaned by %d degrees gets F cos while all of the disc is up (0.5 %)',
    (degrees) => {
      const normal = leaned(degrees);
      check({
        id: '1.2b',
        claim: `factor of a disc, R/d = 0.2, element leaned by ${degrees} degrees, sampled`,
        source: 'F cos w: derivation of the plate element to disc factor',
        unit: '',
        expected: 0.0384615 * normal[1],
        ours: sampledFactor(roundPanel(0.2), Math.PI * 0.04, above([0, 1, 0]), element, normal),
        tolerance: sampledTolerance,
      });
    },
  );

  it.each([
    [5, 1.01],
    [2.5, 1.04],
    [1, 1.25],
    [0.5, 2],
  ])(
    'T21: taken for a point from %d diameters away it comes out %d times too bright (rel 1e-12)',
    (diameters, expected) => {
      const point = pointIlluminance(Math.PI / 4, 1, diameters);
      check({
        id: 'T21',
        claim: `disc taken for a point from ${diameters} diameters: times too bright`,
        source: 'inverse square law over F = 1 / (1 + h^2), computed',
        unit: '',
        expected,
        ours: point / (Math.PI * discFactorOnAxis(0.5, diameters)),
        tolerance: { relative: 1e-12 },
      });
    },
  );
});

describe('Lambertian sphere', () => {
  it.each([0, 40, 70])(
    '1.2c: R = 0.05 m at 1 m, element leaned by %d degrees: F = 0.0025 cos (exact, 0.5 %)',
    (degrees) => {
      const normal = leaned(degrees);
      const row = { id: '1.2c', source: '(R/d)^2 cos, from memory', unit: '', expected: 0.0025 * normal[1] };
      const claim = `factor of a sphere, R/d = 0.05, element leaned by ${degrees} degrees`;
      check({
        ...row,
        claim: `${claim}, closed form`,
        ours: sphereFactor(0.05, 1, normal[1]),
        tolerance: { relative: 1e-12 },
      });
      const ours = sampledFactor(lantern(0.05), 4 * Math.PI * 0.05 ** 2, above([0, 1, 0]), element, normal);
      check({ ...row, claim: `${claim}, sampled`, ours, tolerance: sampledTolerance });
    },
  );
});

describe('Lambertian rectangle', () => {
  it.each([
    ['1.2d', 1, 1, 0.138532],
    ['1.2e', 1, 2, 0.167375],
    ['1.2e', 2, 2, 0.207757],
    ['1.2e', 0.5, 0.5, 0.059864],
    ['1.2e', 0.3, 0.3, 0.025593],
    ['1.2e', 0.5, 0.25, 0.033091],
  ])('%s: X = %d, Y = %d under a corner: F = %d: closed form (abs 1e-6) and sampled (0.5 %)', (id, x, y, expected) => {
    const row = { id, source: 'Howell B-4 (number from memory), computed', unit: '', expected };
    const claim = `factor of a parallel rectangle under a corner, X = ${x}, Y = ${y}`;
    const ours = rectangleFactorUnderCorner(x, y, 1);
    check({ ...row, claim: `${claim}, closed form`, ours, tolerance: { absolute: 1e-6 } });
    // the lamp stands to the north and faces south, so its width runs level and its height upright
    const middle = above([x / 2, y / 2, -1]);
    const sampled = sampledFactor(panel(x, y), x * y, middle, add(middle, south), north);
    check({ ...row, claim: `${claim}, sampled`, ours: sampled, tolerance: sampledTolerance });
  });

  it('1.2f: a square 2 x 2 centred over the element at 1 m: closed form (abs 2e-6) and sampled (0.5 %)', () => {
    const row = { id: '1.2f', source: 'four times Howell B-4, computed', unit: '', expected: 0.554126 };
    const claim = 'factor of a square twice as wide as it is far, centred';
    const ours = 4 * rectangleFactorUnderCorner(1, 1, 1);
    check({ ...row, claim: `${claim}, closed form`, ours, tolerance: { absolute: 2e-6 } });
    const sampled = sampledFactor(panel(2, 2), 4, above([0, 1, 0]), element, up);
    check({ ...row, claim: `${claim}, sampled`, ours: sampled, tolerance: sampledTolerance });
  });

  it.each([
    [1, 1, 1, 0.055734],
    [1, 2, 1, 0.068697],
    [2, 2, 1, 0.124269],
  ])(
    '1.2g: upright, %d high, %d wide, %d away: F = %d: closed form (abs 1e-6) and sampled (0.5 %)',
    (a, b, c, expected) => {
      const source = 'Howell B-3 (number from memory); Tregenza and Sharples, algorithm 3.15';
      const row = { id: '1.2g', source, unit: '', expected };
      const claim = `factor of an upright rectangle ${a} high, ${b} wide, ${c} away`;
      const ours = rectangleFactorUpright(a, b, c);
      check({ ...row, claim: `${claim}, closed form`, ours, tolerance: { absolute: 1e-6 } });
      const lamp = above([b / 2, a / 2, -c]);
      const sampled = sampledFactor(panel(b, a), a * b, lamp, add(lamp, south), up);
      check({ ...row, claim: `${claim}, sampled`, ours: sampled, tolerance: sampledTolerance });
    },
  );

  it.each([
    [1, 284.366],
    [3, 34.9027],
  ])(
    '1.2k: a soft panel 0.6 x 0.6 m of 1000 lm, %d m off: %d lx: closed form (rel 1e-5) and sampled (0.5 %)',
    (d, expected) => {
      const row = { id: '1.2k', source: 'four times Howell B-4, computed', unit: 'lx', expected };
      const claim = `panel 0.6 x 0.6 m of 1000 lm, ${d} m in front`;
      const ours = (1000 / 0.36) * 4 * rectangleFactorUnderCorner(0.3, 0.3, d);
      check({ ...row, claim: `${claim}, closed form`, ours, tolerance: { relative: 1e-5 } });
      const lamp = standing(above([0, d, 0]), element, panel(0.6, 0.6));
      const sampled = 1000 * meter(stage, lamp, element, up, samples);
      check({ ...row, claim: `${claim}, sampled`, ours: sampled, tolerance: sampledTolerance });
    },
  );

  it('1.2l: an even lantern sends 0.0836 of its light through a rectangle 1 x 2 m with a corner 0.5 m away (abs 5e-5)', () => {
    const lamp = standing(element, add(element, up), barePoint());
    const share = meanOverSquare(24, (u, v) => 2 * meter(stage, lamp, above([u, 0.5, 2 * v]), [0, -1, 0], 1));
    check({
      id: '1.2l',
      claim: 'share of a point’s light through a rectangle 1 x 2, corner 0.5 away, traced',
      source: 'Howell B-106, worked number',
      unit: '',
      expected: 0.0836,
      ours: share,
      tolerance: { absolute: 5e-5 },
    });
  });
});

describe('Lambertian polygon', () => {
  it('1.2h: a triangle, one corner behind: F = 0.300349 (abs 1e-6)', () => {
    const corners: Vec3[] = [
      [1, 1, 0],
      [0, 1, 1],
      [-1, 1, -1],
    ];
    check({
      id: '1.2h',
      claim: 'factor of a triangle one length over the element',
      source: 'Lambert 1760, after Stark 2000 (UUCS-00-012), computed; Monte Carlo',
      unit: '',
      expected: 0.300349,
      ours: polygonFactor(corners, [0, 0, 0], up),
      tolerance: { absolute: 1e-6 },
    });
  });

  it.each([
    ['standing on the horizon', 0],
    ['sunk by as much as it stands out', -1],
  ])('1.2j: an upright square of 1, one away, %s: F = 0.0710934 (abs 1e-7)', (where, foot) => {
    const corners: Vec3[] = [
      [1, foot, -0.5],
      [1, foot, 0.5],
      [1, 1, 0.5],
      [1, 1, -0.5],
    ];
    check({
      id: '1.2j',
      claim: `factor of an upright square ${where}`,
      source: 'twice Howell B-3, computed',
      unit: '',
      expected: 0.0710934,
      ours: polygonFactor(corners, [0, 0, 0], up),
      tolerance: { absolute: 1e-7 },
    });
  });
});
