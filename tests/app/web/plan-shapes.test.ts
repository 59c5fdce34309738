import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inkOn } from '../../../app/web/ui/plan-inks.ts';
import { shadowShape } from '../../../app/web/ui/plan-lamp-shapes.ts';
import { planLamps, planSentence } from '../../../app/web/ui/plan-lamps.ts';
import { type PlanShape, planPen } from '../../../app/web/ui/plan-pen.ts';
import { type PlanOptions, planShapes } from '../../../app/web/ui/plan-shapes.ts';
import { planHalf, sharedPlanView, toPlan } from '../../../app/web/ui/plan-view.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { stageOf } from '../../../core/world/stage.ts';

const load = (name: string): Setup => parseSetup(readFileSync(`assets/setups/${name}.json`, 'utf8'));
const stones = load('three-stones');
const hut = load('turf-hut');
const schemeOf = (setup: Setup, id: string): Scheme => {
  const scheme = setup.schemes.find((s) => s.id === id);
  if (!scheme) throw new Error(`no scheme ${id}`);
  return scheme;
};
const side = schemeOf(stones, 'side');

const texts = (shapes: readonly PlanShape[]) => shapes.flatMap((shape) => ('text' in shape ? [shape] : []));
const paths = (shapes: readonly PlanShape[]) => shapes.flatMap((shape) => ('path' in shape ? [shape] : []));
const numbersIn = (path: string) => (path.match(/-?\d+(?:\.\d+)?(?:e-?\d+)?/g) ?? []).map(Number);
const shadowsOf = (setup: Setup, scheme: Scheme, options: PlanOptions = {}) => {
  const { view = sharedPlanView(setup, [scheme]), colouring = 'dark', sizePixels = 160 } = options;
  const pen = planPen(view, colouring, sizePixels);
  const shadows = planLamps(setup, scheme).map((lamp) => JSON.stringify(shadowShape(pen, stageOf(setup), lamp)));
  return paths(planShapes(setup, scheme, options)).filter((shape) => shadows.includes(JSON.stringify(shape)));
};
/** Ends of hatch lines as directions on the drawing. */
const strokesIn = (path: string): [number, number][] => {
  const n = numbersIn(path);
  return Array.from({ length: n.length / 4 }, (_, i) => [
    (n[4 * i + 2] as number) - (n[4 * i] as number),
    (n[4 * i + 3] as number) - (n[4 * i + 1] as number),
  ]);
};

/** Two lamps in one frame, 0.1 m apart. */
const crowded = (): Scheme => {
  const [unlit, frame] = side.frames;
  const [pass] = frame?.passes ?? [];
  const [waypoint] = pass?.waypoints ?? [];
  if (!unlit || !frame || !pass || !waypoint) throw new Error('the stones have no key');
  const [east, north, up] = waypoint.position;
  const beside = { ...waypoint, position: [east, north + 0.1, up] as const };
  const second = { ...pass, id: 'second', name: 'Second', waypoints: [beside] } as typeof pass;
  return { ...side, frames: [unlit, { ...frame, passes: [pass, second] }] };
};

describe('planShapes', () => {
  it('draws finite numbers only, and no two plans of different lamps alike', () => {
    const drawn = stones.schemes.map((scheme) => planShapes(stones, scheme));
    for (const shapes of drawn)
      for (const { path } of paths(shapes)) {
        expect(path).not.toMatch(/NaN|Infinity|undefined/);
      }
    expect(new Set(drawn.map((shapes) => JSON.stringify(shapes))).size).toBe(stones.schemes.length);
  });

  it('numbers every lamp once, in order, in both colourings', () => {
    for (const colouring of ['dark', 'paper'] as const) {
      const scheme = schemeOf(hut, 'inside-and-graze');
      const strong = texts(planShapes(hut, scheme, { colouring })).filter(({ isStrong }) => isStrong);
      expect(strong.map(({ text }) => text)).toEqual(['1', '2']);
    }
  });

  it('stands a lamp’s number where the lamp is (0.01 of a unit)', () => {
    const view = sharedPlanView(stones, [side]);
    const [number] = texts(planShapes(stones, side, { view })).filter(({ isStrong }) => isStrong);
    const [x] = toPlan(view, [6.2, 7.6]);
    expect(number?.x).toBeCloseTo(x, 2);
  });

  it('stands lamps at one place side by side, a disc apart', () => {
    const [first, second] = texts(planShapes(stones, crowded())).filter(({ isStrong }) => isStrong);
    if (!first || !second) throw new Error('two numbers were expected');
    expect(Math.hypot(second.x - first.x, second.y - first.y)).toBeGreaterThan(first.size * 1.2);
  });

  it.each([110, 160, 400])(
    'at %i pixels letters are nine to thirteen pixels and lines at least half a pixel',
    (size) => {
      const shapes = planShapes(stones, side, { sizePixels: size });
      const pixels = (units: number) => (units * size) / (2 * planHalf);
      for (const text of texts(shapes)) {
        expect(pixels(text.size)).toBeGreaterThanOrEqual(9 - 1e-9);
        expect(pixels(text.size)).toBeLessThanOrEqual(13.5);
      }
      for (const { stroke, width } of paths(shapes)) if (stroke) expect(pixels(width)).toBeGreaterThan(0.5);
    },
  );

  it('the picture’s edges open by twice the arctangent of half the sensor over the focal length (0.1 degree)', () => {
    const edges = paths(planShapes(stones, side)).find(
      ({ path, dash }) => dash.length > 0 && path.split('L').length === 3,
    );
    const [ax, ay, x, y, bx, by] = numbersIn(edges?.path ?? '') as [number, number, number, number, number, number];
    const opening = Math.atan2(by - y, bx - x) - Math.atan2(ay - y, ax - x);
    const { sensor, focalLengthMm } = stones.camera;
    const field = 2 * Math.atan(sensor.widthMm / 2 / focalLengthMm);
    expect((opening * 180) / Math.PI).toBeCloseTo((field * 180) / Math.PI, 1);
  });

  it('the scale bar is as long as it says', () => {
    const view = sharedPlanView(stones, stones.schemes);
    const shapes = planShapes(stones, side, { view });
    const metres = Number(
      texts(shapes)
        .find(({ text }) => text.endsWith(' m'))
        ?.text.replace(' m', ''),
    );
    const bar = paths(shapes).find(({ path }) => /^M\S+ \S+V\S+h/.test(path));
    const length = Number(/h([\d.]+)/.exec(bar?.path ?? '')?.[1]);
    expect(length).toBeCloseTo(metres * view.unitsPerMetre, 1);
  });

  it('paper has black, white and greys only; the screen has the gel’s colour', () => {
    const scheme = schemeOf(hut, 'inside-and-graze');
    const colours = (colouring: 'dark' | 'paper') =>
      planShapes(hut, scheme, { colouring }).flatMap((shape) =>
        ('text' in shape ? [shape.colour] : [shape.fill, shape.stroke]).flatMap((colour) => colour ?? []),
      );
    for (const colour of colours('paper')) expect(colour).toMatch(/^#(..)\1\1$/);
    const [lantern] = colours('dark').filter((colour) => colour.startsWith('rgb'));
    const [red = 0, , blue = 0] = numbersIn(lantern ?? '');
    // a lantern behind a full warm gel: more red than blue
    expect(red).toBeGreaterThan(blue + 40);
  });
});

describe('shadows on a small plan', () => {
  it('are hatched along the way from lamp to aim (1 degree for lines over 20 units)', () => {
    const scheme = schemeOf(stones, 'three-quarter-back');
    const view = sharedPlanView(stones, [scheme]);
    const [shadow] = shadowsOf(stones, scheme, { view });
    const [x, y] = toPlan(view, [6.58, 13.81]);
    const [ax, ay] = toPlan(view, [0.2, 7.75]);
    const along = Math.atan2(ay - y, ax - x);
    const long = strokesIn(shadow?.path ?? '').filter(([dx, dy]) => Math.hypot(dx, dy) > 20);
    expect(long.length).toBeGreaterThan(5);
    for (const [dx, dy] of long) expect(Math.abs(Math.sin(Math.atan2(dy, dx) - along))).toBeLessThan(Math.PI / 180);
  });

  it('there is one for each lamp', () => {
    expect(shadowsOf(stones, side)).toHaveLength(planLamps(stones, side).length);
  });

  it('a lantern inside a hut does not shade all the ground: only the stack to its left throws a shadow, to the left', () => {
    const scheme = schemeOf(hut, 'inside');
    const xs = shadowsOf(hut, scheme).flatMap(({ path }) => numbersIn(path).filter((_, i) => i % 2 === 0));
    expect(xs.length).toBeGreaterThan(10);
    expect(Math.max(...xs)).toBeLessThan(0);
  });
});

describe('sharedPlanView', () => {
  it('holds the lamps and cameras of all schemes, so that their plans have one scale', () => {
    const far: Scheme = { ...side, id: 'far', camera: { ...stones.camera, position: [0, -20, 1] } };
    const view = sharedPlanView(stones, [side, far]);
    for (const scheme of [side, far])
      for (const place of [
        (scheme.camera ?? stones.camera).position,
        ...planLamps(stones, scheme).map((lamp) => lamp.place.position),
      ])
        expect(Math.hypot(...toPlan(view, place))).toBeLessThan(planHalf * 0.75);
  });

  it('with another scheme’s camera to the east, its six o’clock is to the right', () => {
    const east: Scheme = { ...side, id: 'east', camera: { ...stones.camera, position: [8.2, 8, 1] } };
    const view = sharedPlanView(stones, [side, east]);
    const six = texts(planShapes(stones, east, { view })).find(({ text }) => text === '6');
    expect(six?.x).toBeGreaterThan(planHalf * 0.9);
    expect(Math.abs(six?.y ?? planHalf)).toBeLessThan(20);
  });
});

describe('planSentence', () => {
  it('says each lamp’s hour and distance', () => {
    // 6 m east and 0.15 m south of the aim, 0.4 m lower, with the camera to the south: by hand
    expect(planSentence(stones, side)).toBe('Plan: Key at 3:00, 6.0 m');
    expect(planSentence(stones, { ...side, frames: side.frames.slice(0, 1) })).toBe('Plan: no lamps');
  });
});

describe('inkOn', () => {
  it('is dark on light colours and light on dark ones', () => {
    expect(inkOn('rgb(255 255 255)')).toBe('#0f1012');
    expect(inkOn('rgb(255 214 170)')).toBe('#0f1012');
    expect(inkOn('rgb(0 0 255)')).toBe('#ffffff');
    expect(inkOn('rgb(120 0 30)')).toBe('#ffffff');
  });
});
