import { describe, expect, it } from 'vitest';
import { askingView, placeWords } from '../../../app/web/groundplan/pointing.ts';
import { hatchPath } from '../../../app/web/ui/hatch.ts';
import { fromPlan, planHalf, planViewOf, ringStep, toPlan } from '../../../app/web/ui/plan-view.ts';
import type { Position } from '../../../core/setup/schema/setup.ts';

const cameras: readonly (readonly [string, Position, Position])[] = [
  ['looking north', [0, 0, 1], [0, 8, 1]],
  ['looking east', [3, 4, 1], [13, 4, 1]],
  ['looking south-west', [10, 10, 1], [2, 1, 1]],
];

describe('the plan', () => {
  it.each(cameras)('%s: camera below the middle, right of the picture on the right', (_, position, aim) => {
    const view = planViewOf({ position, aim }, []);
    const [x, y] = toPlan(view, position);
    expect(x).toBeCloseTo(0, 9);
    expect(y).toBeGreaterThan(planHalf * 0.5);
    expect(toPlan(view, aim)).toEqual([0, -0].map((v) => expect.closeTo(v, 9)));
    // a step to the right of the line of sight: forward (e, n) turned clockwise is (n, -e)
    const [e, n] = [aim[0] - position[0], aim[1] - position[1]];
    const [rx, ry] = toPlan(view, [aim[0] + n, aim[1] - e, 0]);
    expect(rx).toBeGreaterThan(0);
    expect(ry).toBeCloseTo(0, 9);
  });

  it('drawing and ground invert each other (1e-9)', () => {
    const view = planViewOf({ position: [1, -2, 1], aim: [4, 7, 1] }, [[30, 3, 0]]);
    for (const point of [
      [0, 0],
      [12, -5],
      [-3.3, 40],
    ] as const) {
      const [east, north] = fromPlan(view, toPlan(view, point));
      expect(Math.hypot(east - point[0], north - point[1])).toBeLessThan(1e-9);
    }
  });

  it('holds every place it was given, and at most six rings', () => {
    for (const far of [3, 20, 90, 700]) {
      const view = planViewOf({ position: [0, 0, 1], aim: [0, 8, 1] }, [[far, 8, 1]]);
      expect(Math.hypot(...toPlan(view, [far, 8]))).toBeLessThan(planHalf);
      expect(planHalf / view.unitsPerMetre / ringStep(view)).toBeLessThanOrEqual(6);
    }
  });
});

describe('hatchPath', () => {
  it('fills a square with lines whose total length is area over spacing (2 %)', () => {
    const square = [
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ] as const;
    for (const turn of [0, 0.5, 1.2, Math.PI / 2]) {
      const numbers = (hatchPath([square], turn, 0.5).match(/-?[\d.]+/g) ?? []).map(Number);
      let total = 0;
      for (let i = 0; i < numbers.length; i += 4)
        total += Math.hypot(
          (numbers[i + 2] as number) - (numbers[i] as number),
          (numbers[i + 3] as number) - (numbers[i + 1] as number),
        );
      expect(total * 0.5).toBeGreaterThan(9800);
      expect(total * 0.5).toBeLessThan(10200);
    }
  });
  it('draws nothing for less than an area', () => {
    expect(
      hatchPath(
        [
          [
            [0, 0],
            [10, 0],
          ],
        ],
        0,
        1,
      ),
    ).toBe('');
  });
});

describe('askingView', () => {
  const camera = { position: [0, 0, 1], aim: [0, 8, 1] } as const satisfies { position: Position; aim: Position };
  const asked = askingView(camera, [], { at: null, truth: null });

  it('is wider than the plan without a question, and holds still while the cross moves on it', () => {
    expect(asked.unitsPerMetre).toBeLessThan(planViewOf(camera, []).unitsPerMetre * 0.8);
    for (const at of [
      [0, 8],
      [-9, 1],
      [12, 15],
    ] as const)
      expect(askingView(camera, [], { at, truth: null })).toEqual(asked);
  });

  it('widens for a place that is off the drawing, so that it is on it', () => {
    const truth = [40, 3] as const;
    const view = askingView(camera, [], { at: [0, 8], truth });
    expect(toPlan(asked, truth)[0]).toBeGreaterThan(planHalf);
    expect(Math.hypot(...toPlan(view, truth))).toBeLessThan(planHalf);
  });

  it('tells a place by the clock, camera at six', () => {
    expect(placeWords(asked, [4.2, 8])).toBe('3:00, 4.2 m from the middle');
    expect(placeWords(asked, [0, 5])).toBe('6:00, 3.0 m from the middle');
    expect(placeWords(asked, [-2, 8])).toBe('9:00, 2.0 m from the middle');
  });
});
