import { describe, expect, it } from 'vitest';
import { drawPlan, planPage } from '../../../core/card/plan/draw-plan.ts';
import { type PlanData, planData } from '../../../core/card/plan/plan-data.ts';
import { everyShape } from '../../../core/card/sheet/shapes.ts';
import { svgOfPage } from '../../../core/card/sheet/svg-of-page.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

const planOf = (setup: Setup) => {
  const scheme = setup.schemes[0] as Scheme;
  const report = reportScheme(setup, scheme);
  return { card: cardOf(setup), data: planData(setup, report) };
};
const svgOf = (setup: Setup): string => {
  const { card, data } = planOf(setup);
  return svgOfPage(planPage(card, data), 'Plan');
};

/** Attributes of the element with an id, as numbers. */
const numbersOf = (svg: string, id: string): Record<string, number> => {
  const element = new RegExp(`<[a-z]+ id="${id}"[^>]*>`).exec(svg)?.[0] ?? '';
  return Object.fromEntries(
    [...element.matchAll(/ ([\w-]+)="(-?[\d.]+)"/g)].map(([, name, value]) => [name, Number(value)]),
  );
};
/** Where an element is on paper, in millimetres: the SVG is one unit a millimetre. */
const centreOf = (svg: string, number: number) => {
  const { cx = Number.NaN, cy = Number.NaN } = numbersOf(svg, `number-${number}`);
  return [cx, cy] as const;
};
const apart = (a: readonly [number, number], b: readonly [number, number]) => Math.hypot(a[0] - b[0], a[1] - b[1]);

describe('the printed plan', () => {
  // 6 m and 7.5 m from the stone at 2:30 and 9:00; all to be seen from the numbers alone
  const setup = stoneSetup(passFrom('a', 2.5, 6, 0.5), passFrom('b', 9, 7.5, 1.4, { on: 4, off: 6 }));

  it('is to scale: two stand points are as far apart as the document has them (0.1 mm of paper)', () => {
    const svg = svgOf(setup);
    expect(svg).toMatch(/^<svg [^>]*width="160mm" height="160mm" viewBox="0 0 160 160"/);
    const [a, b] = setup.schemes[0]?.frames[0]?.passes.map(({ waypoints }) => waypoints[0]?.position) ?? [];
    const metres = Math.hypot((a?.[0] ?? 0) - (b?.[0] ?? 0), (a?.[1] ?? 0) - (b?.[1] ?? 0));
    // the bar says how long it is, in its words
    const bar = numbersOf(svg, 'scale-bar');
    const barMm = (bar['x2'] ?? 0) - (bar['x1'] ?? 0);
    const [, barMetres, scale] = />(\d+) m, 1 : (\d+)</.exec(svg)?.map(Number) ?? [];
    const onPaper = apart(centreOf(svg, 1), centreOf(svg, 2));
    expect(barMm / (barMetres ?? 0)).toBeCloseTo(1000 / (scale ?? 0), 2);
    expect(onPaper).toBeCloseTo((metres * barMm) / (barMetres ?? 0), 1);
    expect(onPaper).toBeCloseTo((metres * 1000) / (scale ?? 0), 1);
  });

  it('has a bar of round feet where lengths are in feet', () => {
    const svg = svgOf({ ...setup, card: { ...setup.card, lengths: 'feet' } });
    const bar = numbersOf(svg, 'scale-bar');
    const [, feet, scale] = />(\d+) ft, 1 : (\d+)</.exec(svg)?.map(Number) ?? [];
    expect((bar['x2'] ?? 0) - (bar['x1'] ?? 0)).toBeCloseTo(((feet ?? 0) * 304.8) / (scale ?? 1), 2);
  });

  it('lies with the camera under the mark: a lamp at three is level with it and to the right, wherever north is', () => {
    for (const northDegrees of [0, 90, 223]) {
      const svg = svgOf({
        ...stoneSetup(passFrom('a', 3, 6, 0.5), passFrom('b', 9, 6, 1, { on: 4, off: 6 })),
        place: { ...setup.place, northDegrees },
      });
      const [three, nine] = [centreOf(svg, 1), centreOf(svg, 2)];
      expect(three[1]).toBeCloseTo(nine[1], 3);
      expect(three[0]).toBeGreaterThan(nine[0]);
      // the camera looks along the scene's north, whose true bearing is given: north is that far to the left of up
      const north = numbersOf(svg, 'north');
      const turn = Math.atan2((north['x2'] ?? 0) - (north['x1'] ?? 0), (north['y1'] ?? 0) - (north['y2'] ?? 0));
      const degrees = ((turn * 180) / Math.PI + 360) % 360;
      expect(degrees).toBeCloseTo((360 - northDegrees) % 360, 1);
    }
  });

  it('moves a number that would lie on another aside, with a leader from its true spot', () => {
    const svg = svgOf(stoneSetup(passFrom('a', 3, 6, 0.5), passFrom('b', 3, 6.1, 1, { on: 4, off: 6 })));
    const [one, two] = [centreOf(svg, 1), centreOf(svg, 2)];
    expect(apart(one, two)).toBeGreaterThan(7.8);
    const spot = numbersOf(svg, 'spot-2');
    const scale = Number(/1 : (\d+)</.exec(svg)?.[1]);
    expect(apart([spot['cx'] ?? 0, spot['cy'] ?? 0], one)).toBeCloseTo(100 / scale, 2);
    expect(svg).not.toContain('id="spot-1"');
  });

  it('leaves out the hour that would lie on the camera or on a way on foot', () => {
    const { card, data } = planOf(setup);
    const box = { x: 0, y: 0, width: 120, height: 90 };
    const hoursOf = (shown: PlanData) =>
      everyShape(drawPlan(card, shown, box)).flatMap((shape) =>
        shape.kind === 'text' && /^\d+$/.test(shape.text) && shape.style.weight === 400 ? [shape.text] : [],
      );
    // a way straight up from the camera through the mark, to the north
    const up: PlanData['walks'][number] = { from: null, to: null, points: [card.camera.place, [0, 100]] };
    expect(hoursOf({ ...data, walks: [] })).toContain('12');
    expect(hoursOf({ ...data, walks: [up] })).not.toContain('12');
  });

  it('draws with one stroke weight, in black and white', () => {
    const { card, data } = planOf(setup);
    const hazard = { name: 'Edge', position: [4, 4] as [number, number], radiusMetres: 2 };
    const shapes = everyShape(drawPlan(card, { ...data, hazards: [hazard] }, { x: 0, y: 0, width: 120, height: 90 }));
    const widths = shapes.flatMap((shape) =>
      'width' in shape && shape.kind !== 'picture' && shape.width > 0 ? [shape.width] : [],
    );
    // subjects are stroked twice as wide and filled over, which leaves one weight
    expect(new Set(widths)).toEqual(new Set([0.3, 0.6]));
    const colours = [...svgOf(setup).matchAll(/(?:fill|stroke)="(#?\w+)"/g)].map(([, colour]) => colour);
    expect(new Set(colours)).toEqual(new Set(['#000', '#fff', 'none']));
  });

  it('hatches and names hazards, and keeps what lies far out of the page within its box', () => {
    const { card, data } = planOf(setup);
    const far: PlanData = { ...data, hazards: [{ name: 'Deep <water>', position: [40, 0], radiusMetres: 30 }] };
    const [clip, ...more] = drawPlan(card, far, { x: 10, y: 20, width: 120, height: 90 });
    expect(more).toEqual([]);
    expect(clip).toMatchObject({ kind: 'clip', x: 10, y: 20, width: 120, height: 90 });
    const svg = svgOfPage(planPage(card, far), 'Plan');
    expect(svg).toContain('>Deep &lt;water&gt;</text>');
    expect(svg).toContain('overflow="hidden"');
  });

  it('writes no more of a vast hazard’s hatch than lies on the plan, and all of that', () => {
    const { card, data } = planOf(setup);
    const box = { x: 0, y: 0, width: 120, height: 90 };
    const pathsOf = (radiusMetres: number) =>
      everyShape(drawPlan(card, { ...data, hazards: [{ name: 'Bog', position: [3, 2], radiusMetres }] }, box)).flatMap(
        (shape) => (shape.kind === 'path' ? [shape.path] : []),
      );
    const hatch = pathsOf(500).toSorted((a, b) => b.length - a.length)[0] as string;
    const ends = [...hatch.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    // lines at 45°, 2.2 mm apart, over a box whose diagonal is (120 + 90) / √2 across them: 67 or 68 of them
    expect(ends.length / 2).toBeGreaterThanOrEqual(67);
    expect(ends.length / 2).toBeLessThanOrEqual(68);
    for (const [x, y] of ends) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(-0.001);
      expect(x).toBeLessThanOrEqual(120.001);
      expect(y).toBeLessThanOrEqual(90.001);
      // from edge to edge: each end is on one
      expect(Math.min(x, y, 120 - x, 90 - y)).toBeLessThanOrEqual(0.001);
    }
  });
});
