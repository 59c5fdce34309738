import { describe, expect, it } from 'vitest';
import { bench } from '../../../core/kits/bench.ts';
import { car } from '../../../core/kits/car.ts';
import { cart } from '../../../core/kits/cart.ts';
import { fence } from '../../../core/kits/fence.ts';
import { jetty } from '../../../core/kits/jetty.ts';
import { silo } from '../../../core/kits/silo.ts';
import { tent } from '../../../core/kits/tent.ts';
import { van } from '../../../core/kits/van.ts';
import { well } from '../../../core/kits/well.ts';
import { windmill } from '../../../core/kits/windmill.ts';
import { boundsOf, cornersOf, kitSubject, sizeOf } from './kit-checks.ts';

/** Numbers that are typed come out of the meshes within a millimetre; what is measured is said by each line. */
const within = (measured: number, typed: number, metres = 1e-3) =>
  expect(Math.abs(measured - typed), `${measured} for ${typed}`).toBeLessThanOrEqual(metres);

describe('jetty', () => {
  it.each([
    [40, 1.6, 0.8],
    [7.3, 0.9, 0.4],
    [58.5, 5, 3.1],
  ])('%d m long, %d m wide, deck at %d m', (lengthMetres, widthMetres, deckMetres) => {
    const made = kitSubject(jetty, { lengthMetres, widthMetres, deckMetres }, 9);
    const [wide, long] = sizeOf(made);
    within(long, lengthMetres);
    within(wide, widthMetres);
    within(boundsOf(made, 'Board').high[2], deckMetres);
    // nothing else comes through the boards
    within(boundsOf(made, 'Board', 'Bearer', 'Cross beam', 'Post').high[2], deckMetres);
  });

  it('scene S7 of the trade notes: posts of 0.1 m radius every 2.5 m, gaps of 12 mm, a rail on one side', () => {
    const made = kitSubject(jetty, { boardMetres: 1 });
    const places = (name: string) => [
      ...new Set(made.parts.filter((part) => part.name === name).map(({ position }) => position[1])),
    ];
    const norths = places('Post').sort((a, b) => a - b);
    for (let k = 1; k < norths.length; k++) within((norths[k] as number) - (norths[k - 1] as number), 2.5, 1e-4);
    const radii = new Set(made.parts.flatMap((p) => (p.kind === 'cylinder' ? [p.radiusMetres] : [])));
    expect([...radii]).toEqual([0.1]);
    const boards = made.parts.flatMap((p) => (p.kind === 'box' && p.name === 'Board' ? [p] : []));
    // 40 boards of about a metre
    expect(boards.length).toBe(40);
    for (let k = 1; k < boards.length; k++) {
      const [a, b] = [boards[k - 1], boards[k]] as [(typeof boards)[number], (typeof boards)[number]];
      within(b.position[1] - b.depthMetres / 2 - (a.position[1] + a.depthMetres / 2), 0.012, 1e-4);
    }
    expect(boundsOf(made, 'Hand rail').low[0]).toBeGreaterThan(0);
  });
});

describe('tent', () => {
  it.each([0, 1])('shape %d: cloth 2.4 × 1.5 × 1.1 m, hem in the ground', (shape) => {
    const made = kitSubject(tent, { shape });
    const cloth = ['Cloth', 'Front', 'Back'];
    const [wide, long] = sizeOf(made, ...cloth);
    within(wide, 1.5);
    within(long, 2.4);
    within(boundsOf(made, ...cloth).high[2], 1.1);
    within(boundsOf(made, ...cloth).low[2], -0.01);
  });
});

describe('fence', () => {
  it('is as long and as high as typed, and its lowest wire hangs down in the middle of a bay by the typed sag', () => {
    const typed = { lengthMetres: 21, heightMetres: 1.35, postMetres: 3, wires: 3, leanDegrees: 8 };
    const low = [0, 0.05].map((sagMetres) => {
      const made = kitSubject(fence, { ...typed, sagMetres }, 5);
      within(sizeOf(made)[0], typed.lengthMetres);
      within(boundsOf(made).high[2], typed.heightMetres);
      expect(made.parts.filter(({ name }) => name === 'Post').length).toBe(8);
      return boundsOf(made, 'Wire').low[2];
    }) as [number, number];
    within(low[0] - low[1], 0.05, 1e-4);
  });

  it('a sagging wire is a parabola: a third of the way along it hangs by 8/9 of the sag', () => {
    // y = 4 s t (1 - t), at t = 1/3 and 1/2; a wire has six pieces a bay
    const made = kitSubject(fence, { lengthMetres: 4, postMetres: 4, wires: 1, sagMetres: 0.09, leanDegrees: 0 });
    const corners = cornersOf(made, (name) => name === 'Wire');
    const from = Math.min(...corners.map(([east]) => east as number));
    const to = Math.max(...corners.map(([east]) => east as number));
    const lowAt = (share: number) => {
      const at = from + (to - from) * share;
      return Math.min(
        ...corners.filter(([east]) => Math.abs((east as number) - at) < 1e-3).map(([, , up]) => up as number),
      );
    };
    within(lowAt(0) - lowAt(1 / 3), (8 / 9) * 0.09, 1e-4);
    within(lowAt(0) - lowAt(1 / 2), 0.09, 1e-4);
  });
});

describe('bench, well and silo', () => {
  it('bench: length, depth and height of the seat, height of the back', () => {
    const made = kitSubject(bench, { lengthMetres: 2.15, seatMetres: 0.41, depthMetres: 0.5, topMetres: 0.92 });
    const seat = sizeOf(made, 'Slat');
    within(seat[0], 2.15);
    within(seat[1], 0.5);
    within(boundsOf(made, 'Slat').high[2], 0.41);
    within(boundsOf(made).high[2], 0.92, 2e-3);
  });

  it('well: width, height and thickness of the wall, height of the roof', () => {
    const made = kitSubject(well, { diameterMetres: 1.9, wallMetres: 0.95, thickMetres: 0.25, topMetres: 2.9 }, 4);
    // stones have flat pieces of face, whose middles lie farther in
    within(sizeOf(made, 'Stone')[0], 1.9, 8e-3);
    within(sizeOf(made, 'Stone')[1], 1.9, 8e-3);
    within(boundsOf(made, 'Stone').high[2], 0.95);
    within(boundsOf(made).high[2], 2.9);
    const inner = Math.min(
      ...cornersOf(made, (name) => name === 'Stone').map(([e, n]) => Math.hypot(e as number, n as number)),
    );
    within(inner, 1.9 / 2 - 0.25);
  });

  it.each([0, 1])('silo with roof %d: height in all and width across', (roof) => {
    const made = kitSubject(silo, { heightMetres: 9.5, diameterMetres: 3.3, roof });
    within(boundsOf(made).high[2], 9.5);
    within(sizeOf(made, 'Body', 'Roof', 'Hoop')[0], 3.3);
  });
});

describe('car, van and cart', () => {
  it.each([
    ['car', car, [4.37, 1.8, 1.52]],
    ['van', van, [6.1, 2.05, 2.6]],
  ] as const)('%s: length, width, height', (_, kit, [lengthMetres, widthMetres, heightMetres]) => {
    const made = kitSubject(kit, { lengthMetres, widthMetres, heightMetres });
    const [wide, long, high] = sizeOf(made);
    within(long, lengthMetres);
    within(wide, widthMetres);
    within(high, heightMetres);
    within(boundsOf(made).low[2], 0);
    expect(boundsOf(made, 'Headlight').high[1]).toBeLessThan(-1.5);
  });

  it('cart: bed, wheels, and shafts that lie on the ground', () => {
    const typed = { lengthMetres: 2.3, widthMetres: 1.1, wheelMetres: 1.42, spokes: 14 };
    const level = kitSubject(cart, { ...typed, rests: 1 });
    const bed = sizeOf(level, 'Floor board');
    within(bed[0], 1.1);
    within(bed[1], 2.3);
    within(sizeOf(level, 'Tyre')[2], 1.42);
    expect(level.parts.filter(({ name }) => name === 'Spoke').length).toBe(28);
    const resting = kitSubject(cart, { ...typed, rests: 0 });
    within(boundsOf(resting, 'Shaft').low[2], 0, 0.01);
  });
});

describe('windmill', () => {
  it.each([0, 1])('tower %d: height of the cap, width at the foot', (tower) => {
    const made = kitSubject(windmill, { heightMetres: 13.5, diameterMetres: 6.2, tower });
    within(boundsOf(made, 'Cap').high[2], 13.5);
    within(sizeOf(made, 'Tower')[0], 6.2);
    within(sizeOf(made, 'Tower')[1], 6.2);
  });

  it('sails clear the ground by no less than typed, however they are turned, and at worst by 0.15 m more', () => {
    const lows = Array.from({ length: 19 }, (_, k) => {
      const made = kitSubject(windmill, { clearMetres: 1.4, sailsDegrees: 5 * k });
      return boundsOf(made, 'Sail arm', 'Sail bar', 'Sail lath').low[2];
    });
    expect(Math.min(...lows)).toBeGreaterThanOrEqual(1.4);
    expect(Math.min(...lows)).toBeLessThanOrEqual(1.55);
  });

  it('a quarter turn of four sails gives the same sails (1 mm)', () => {
    const outline = (sailsDegrees: number) => {
      const { low, high } = boundsOf(kitSubject(windmill, { sailsDegrees }), 'Sail arm', 'Sail bar', 'Sail lath');
      return [...low, ...high];
    };
    outline(0).forEach((v, i) => {
      within(outline(90)[i] as number, v);
    });
  });

  it('sails go by the tower without touching it', () => {
    for (const sailsDegrees of [0, 15, 30, 45, 60, 75, 90])
      for (const diameterMetres of [3, 10]) {
        const made = kitSubject(windmill, { sailsDegrees, diameterMetres, heightMetres: 8 });
        // a round tower is a cone cut off: as wide at a height as a line from foot to head says
        const tower = cornersOf(made, (name) => name === 'Tower') as [number, number, number][];
        const head = boundsOf(made, 'Tower').high[2];
        const radii = (up: number) =>
          Math.max(...tower.filter(([, , z]) => Math.abs(z - up) < 1e-6).map(([e, n]) => Math.hypot(e, n)));
        const [footRadius, headRadius] = [radii(0), radii(head)];
        const capRadius = sizeOf(made, 'Cap')[0] / 2;
        const wideAt = (up: number) => {
          if (up < head) return footRadius + ((headRadius - footRadius) * up) / head;
          return up < 8 ? capRadius : 0;
        };
        const clear = (cornersOf(made, (name) => name.startsWith('Sail')) as [number, number, number][]).map(
          ([e, n, up]) => Math.hypot(e, n) - wideAt(up),
        );
        expect(Math.min(...clear)).toBeGreaterThan(0.05);
      }
  });
});
