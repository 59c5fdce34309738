import { describe, expect, it } from 'vitest';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { clockShapes } from '../../../core/card/plan/clock-shapes.ts';
import { drawPlan } from '../../../core/card/plan/draw-plan.ts';
import { legend } from '../../../core/card/plan/legend.ts';
import { placeCircles } from '../../../core/card/plan/place-circles.ts';
import { type PlanData, planData } from '../../../core/card/plan/plan-data.ts';
import { planFrame } from '../../../core/card/plan/plan-frame.ts';
import { everyShape, type Shape } from '../../../core/card/sheet/shapes.ts';
import { boxAt } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

const box = { x: 0, y: 0, width: 120, height: 90 };
const bare: PlanData = { subjects: [], hazards: [], walks: [], northDegrees: 0 };

const drawn = (card: FieldCard, data: PlanData = bare) => everyShape(drawPlan(card, data, box));
type Path = Extract<Shape, { kind: 'path' }>;
const pathsOf = (shapes: readonly Shape[]) => shapes.filter((shape): shape is Path => shape.kind === 'path');
const cornersOf = ({ path }: Path) =>
  [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
/** Heads of arrows by where they point to and which way: filled triangles, the tip first. */
const headsOf = (shapes: readonly Shape[]) =>
  pathsOf(shapes)
    .filter((shape) => shape.fill === 'black' && shape.width === 0)
    .map((shape) => {
      const [tip, a, b] = cornersOf(shape) as [readonly [number, number], ...(readonly [number, number])[]];
      const back = [((a?.[0] ?? 0) + (b?.[0] ?? 0)) / 2, ((a?.[1] ?? 0) + (b?.[1] ?? 0)) / 2] as const;
      return { tip, way: Math.atan2(tip[1] - back[1], tip[0] - back[0]) };
    });

describe('the way of a moving lamp on the plan', () => {
  /** A lamp that goes from the south east to the north east, and may rest there. */
  const cardMoved = (...rest: number[]) => {
    const waypoints = [
      { time: 0, position: [5, -4, 1], aim: [0, 0, 1] },
      { time: 2, position: [5, 3, 1], aim: [0, 0, 1] },
      ...rest.map((time) => ({ time, position: [5, 3, 1], aim: [0, 0, 1] })),
    ];
    return cardOf(stoneSetup({ off: 4, waypoints }));
  };

  it.each([
    ['goes on to its end', []],
    ['rests at its end', [3, 4]],
  ])('is dashed, with an arrow up the paper at its end, where the lamp %s', (_, rest) => {
    const card = cardMoved(...rest);
    const { place } = planFrame(card, box);
    const [fromX, fromY] = place([5, -4]);
    const [toX, toY] = place([5, 3]);
    const [way] = pathsOf(drawn(card)).filter(({ dash }) => dash) as [Path];
    const corners = cornersOf(way);
    expect(corners[0]?.[0]).toBeCloseTo(fromX, 3);
    expect(corners[0]?.[1]).toBeCloseTo(fromY, 3);
    // the mark is north of the camera: north is up, and the arrow goes straight there
    const heads = headsOf(drawn(card)).filter(({ tip }) => Math.hypot(tip[0] - toX, tip[1] - toY) < 0.01);
    expect(heads).toHaveLength(1);
    expect(heads[0]?.way).toBeCloseTo(-Math.PI / 2, 2);
  });
});

describe('the arrow that says where a lamp points', () => {
  // besides the one to the north
  const countOf = (aim: number[]) => {
    const pass = { waypoints: [{ position: [6, 0, 2], aim }] };
    return headsOf(drawn(cardOf(stoneSetup(pass, passFrom('b', 9, 6, 1))))).length - 1;
  };

  it('is left out for a lamp that points straight down, which has no way on the plan', () => {
    expect(countOf([0, 0, 1])).toBe(2);
    expect(countOf([6, 0, 0])).toBe(1);
    expect(countOf([5.9, 0, 0])).toBe(1);
  });
});

describe('the camera on the plan', () => {
  const seen = cardOf(stoneSetup(passFrom('a', 3, 6, 0.5)));
  const down: FieldCard = { ...seen, camera: { ...seen.camera, bearingDegrees: null } };

  it('has edges of its picture, but for one that looks straight down, where they have no way', () => {
    const edges = (card: FieldCard) =>
      pathsOf(drawn(card)).filter(({ path, fill }) => fill === 'none' && !/Z|M.*M/.test(path));
    expect(edges(seen)).toHaveLength(1);
    expect(edges(down)).toHaveLength(0);
    // its body is there, turned to the north
    expect(pathsOf(drawn(down)).filter(({ width, fill }) => fill === 'black' && width > 0)).toHaveLength(1);
  });

  it('stands over the mark where it looks down at it: north is up then', () => {
    const { camera } = down;
    const above = { ...down, rows: [], mark: { ...down.mark, place: camera.place } };
    const { place } = planFrame(above, box);
    const [x, y] = place(camera.place);
    const [northX, northY] = place([camera.place[0], camera.place[1] + 1]);
    expect(northX).toBeCloseTo(x, 9);
    expect(northY).toBeLessThan(y);
  });
});

describe('the scale of the plan', () => {
  it('is a round one as far as rulers have them; past 1 : 5000 whole thousands hold what is far', () => {
    const card = cardOf(stoneSetup(passFrom('a', 3, 6, 0.5)));
    const far = { ...card, camera: { ...card.camera, place: [0, -800] as const } };
    const { scale, place } = planFrame(far, box);
    // 800 m under the mark at 62 % of the 73 mm: 17.7 m or more a millimetre
    expect(scale).toBe(18_000);
    const [, y] = place([0, -800]);
    expect(y).toBeLessThanOrEqual(box.height);
  });
});

describe('the land on the plan', () => {
  const outlinesDrawn = (size: readonly [number, number, number]) => {
    const setup = onePassSetup({
      camera: { position: [0, -9, 1.2], aim: [0, 0, 1] },
      pass: { waypoints: [{ position: [6, 0, 2], aim: [0, 0, 1] }] },
      subjects: [boxAt('thing', [2, 2, 0], size)],
    });
    const card = cardOf(setup);
    const whites = (data: PlanData) => pathsOf(drawn(card, data)).filter(({ fill }) => fill === 'white').length;
    return whites(planData(setup, { walks: [] })) - whites(bare);
  };

  it('has what stands there as an outline; not a speck, nor a hill that one stands on', () => {
    expect(outlinesDrawn([2, 2, 1])).toBe(1);
    // at 1 : 200 or smaller a centimetre is a twentieth of a millimetre
    expect(outlinesDrawn([0.01, 0.01, 1])).toBe(0);
    expect(outlinesDrawn([60, 60, 0.4])).toBe(0);
  });

  it('has one outline of a subject of very many parts', () => {
    const parts = (count: number) =>
      Array.from({ length: count }, (_, i) => ({
        ...boxAt('', [i % 40, Math.floor(i / 40), 0], [0.5, 0.5, 0.5]).parts[0],
      }));
    const outlines = (count: number) => {
      const setup = onePassSetup({
        camera: { position: [0, -9, 1.2], aim: [0, 0, 1] },
        pass: { waypoints: [{ position: [6, 0, 2], aim: [0, 0, 1] }] },
        subjects: [{ ...boxAt('heap', [0, 0, 0], [1, 1, 1]), parts: parts(count) }],
      });
      return planData(setup, { walks: [] }).subjects[0] as readonly (readonly (readonly [number, number])[])[];
    };
    expect(outlines(40)).toHaveLength(40);
    const [whole, ...more] = outlines(1520);
    expect(more).toEqual([]);
    // 40 by 38 boxes of half a metre, a metre apart
    const ends = (axis: 0 | 1) => (whole ?? []).map((place) => place[axis]);
    expect([Math.min(...ends(0)), Math.max(...ends(0))]).toEqual([-0.25, 39.25]);
    expect([Math.min(...ends(1)), Math.max(...ends(1))]).toEqual([-0.25, 37.25]);
  });
});

describe('numbers and hours on the plan', () => {
  it('a number that finds no room aside stays at its spot', () => {
    const spot = [6, 6] as const;
    const placed = placeCircles([spot, spot], { x: 0, y: 0, width: 12, height: 12 }, []);
    expect(placed).toEqual(Array(2).fill({ spot, middle: spot, isAside: false }));
  });

  it('leaves out the hour on which somebody stands still', () => {
    const square = { ...planFrame(cardOf(stoneSetup(passFrom('a', 3, 6, 0.5))), box), box: { ...box, width: 90 } };
    // hours lie 4.5 mm inside the nearest edge: twelve at the top
    const hours = (at: readonly [number, number]) =>
      clockShapes(square, [45, 45], [], { camera: [45, 70], spots: [], lines: [[at, at]] }).flatMap((shape) =>
        shape.kind === 'text' ? [shape.text] : [],
      );
    expect(hours([45, 45])).toHaveLength(12);
    expect(hours([45, 4.5])).toEqual(['1', '2', '3', '4', '5', '6', '7', '8', '9', '10', '11']);
  });
});

describe('what the signs of the plan mean', () => {
  const card = cardOf(stoneSetup(passFrom('a', 3, 6, 0.5)));
  const words = (of: FieldCard, data: PlanData) =>
    legend(of, data, 0, 0, 90).shapes.flatMap((shape) => (shape.kind === 'text' && shape.x === 12 ? [shape.text] : []));

  it('has those that occur, and no others', () => {
    const always = ['mark', 'edges of the picture'];
    const lamps = ['where the lamp points', 'lamp on that long after', 'the shutter opens'];
    expect(words({ ...card, rows: [] }, bare)).toEqual(always);
    expect(words(card, bare)).toEqual([...always, ...lamps]);
    const hazards = [{ name: 'Bog', position: [3, 2] as [number, number], radiusMetres: 2 }];
    const walks = [{ from: null, to: null, points: [[0, 0] as const, [1, 1] as const] }];
    const moved = card.rows.map((row) => ({ ...row, end: row.start }));
    expect(words({ ...card, rows: moved }, { ...bare, hazards, walks })).toEqual([
      ...always,
      ...lamps,
      'on foot',
      'way of a moving lamp',
      'hazard: keep off',
    ]);
  });
});
