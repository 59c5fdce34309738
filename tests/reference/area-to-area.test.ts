import { describe, it } from 'vitest';
import { add, type Vec3 } from '../../core/geometry/vec.ts';
import { meter } from '../../core/trace/meter.ts';
import { stageWith, standing } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import { rectangleFactorUnderCorner, rectangleFactorUpright } from './support/closed-forms.ts';
import { element, north, panel, roundPanel, south, up } from './support/lamps.ts';
import { meanOverSquare } from './support/quadrature.ts';

// The factor between two surfaces is the mean, over one, of what its elements get from the other.
const { check } = accuracySection('Area to area');
const stage = stageWith();
const samples = 1024;
const sampledTolerance = { relative: 0.005 };
const above = (offset: Vec3): Vec3 => add(element, offset);

/** Factor of an a x b rectangle for a parallel element at (x, y) from its corner: four rectangles, each under a corner. */
const overElement = (a: number, b: number, c: number, x: number, y: number): number =>
  [x, a - x].reduce((sum, w) => sum + [y, b - y].reduce((part, h) => part + rectangleFactorUnderCorner(w, h, c), 0), 0);

describe('parallel rectangles', () => {
  const worked = 'Howell C-11; Siegel and Howell, 4th edition, p. 843';
  it.each([
    ['1.3a', 1, 1.5, 0.5, 0.4756, 5e-5, `${worked}, worked number`],
    ['1.3b', 1, 1, 1, 0.1998, 5e-5, `${worked}`],
    ['1.3d', 1, 2, 1, 0.285875, 1e-6, 'Howell C-11, computed'],
    ['1.3d', 10, 10, 1, 0.826995, 1e-6, 'Howell C-11, computed'],
  ])(
    '%s: %d x %d with a gap of %d: F12 = %d as the mean of closed forms (abs %d)',
    (id, a, b, c, expected, absolute, source) => {
      check({
        id,
        claim: `factor between rectangles ${a} x ${b}, gap ${c}, closed form averaged`,
        source,
        unit: '',
        expected,
        ours: meanOverSquare(32, (u, v) => overElement(a, b, c, a * u, b * v)),
        tolerance: { absolute },
      });
    },
  );

  it.each([
    ['1.3a', 1, 1.5, 0.5, 0.4756, worked],
    ['1.3b', 1, 1, 1, 0.1998, worked],
    ['1.3d', 1, 2, 1, 0.285875, 'Howell C-11, computed'],
  ])(
    '%s: %d x %d with a gap of %d: F12 = %d as the mean of sampled elements (0.5 %)',
    (id, a, b, c, expected, source) => {
      const lamp = standing(above([0, 0, -c]), element, panel(a, b));
      check({
        id,
        claim: `factor between rectangles ${a} x ${b}, gap ${c}, sampled`,
        source,
        unit: '',
        expected,
        ours: meanOverSquare(
          10,
          (u, v) => a * b * meter(stage, lamp, above([a * (u - 0.5), b * (v - 0.5), 0]), north, samples),
        ),
        tolerance: sampledTolerance,
      });
    },
  );
});

describe('discs on one axis', () => {
  it.each([
    ['1.3e', 0.1, 0.2, 0.5, 0.1339, 'Howell C-41; Siegel and Howell, 4th edition, p. 845, worked number'],
    ['1.3g', 1, 1, 1, 0.381966, 'Howell C-41; printed 0.382, computed'],
  ])(
    '%s: radii %d and %d, gap %d: F12 = %d as the mean of sampled elements (0.5 %)',
    (id, r1, r2, gap, expected, source) => {
      const lamp = standing(above([0, gap, 0]), element, roundPanel(r2));
      const factor = (u: number, v: number): number => {
        // even over the smaller disc: the share of its area goes with the square of the radius
        const [r, turn] = [r1 * Math.sqrt(u), 2 * Math.PI * v];
        const place = above([r * Math.cos(turn), 0, r * Math.sin(turn)]);
        return Math.PI * r2 ** 2 * meter(stage, lamp, place, up, samples);
      };
      check({
        id,
        claim: `factor from a disc of ${r1} to one of ${r2}, gap ${gap}, sampled`,
        source,
        unit: '',
        expected,
        ours: meanOverSquare(10, factor),
        tolerance: sampledTolerance,
      });
    },
  );
});

describe('squares that share an edge, square to each other', () => {
  const row = {
    id: '1.3h',
    source: 'Howell C-14; printed 0.200, computed',
    unit: '',
    expected: 0.200044,
  };

  it('1.3h: F12 = 0.200044 as the mean of closed forms (abs 1e-5, for the rule’s own error at the edge)', () => {
    const factor = (u: number, v: number) => rectangleFactorUpright(1, u, v) + rectangleFactorUpright(1, 1 - u, v);
    const claim = 'factor between two squares along an edge, closed form averaged';
    check({ ...row, claim, ours: meanOverSquare(48, factor), tolerance: { absolute: 1e-5 } });
  });

  it('1.3h: the same as the mean of sampled elements (1 %: near the edge samples are few and strong)', () => {
    const middle = above([0, 0.5, -1]);
    const lamp = standing(middle, add(middle, south), panel(1, 1));
    const factor = (u: number, v: number) => meter(stage, lamp, above([u - 0.5, 0, v - 1]), up, 4 * samples);
    const claim = 'factor between two squares along an edge, sampled';
    check({ ...row, claim, ours: meanOverSquare(12, factor), tolerance: { relative: 0.01 } });
  });
});
