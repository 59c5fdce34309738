import { describe, expect, it } from 'vitest';
import { boulderPile } from '../../../core/kits/boulder-pile.ts';
import { carvedSlab } from '../../../core/kits/carved-slab.ts';
import { chapel } from '../../../core/kits/chapel.ts';
import { drystoneWall } from '../../../core/kits/drystone-wall.ts';
import { hut } from '../../../core/kits/hut.ts';
import { naturalArch } from '../../../core/kits/natural-arch.ts';
import { standingStone } from '../../../core/kits/standing-stone.ts';
import { tree } from '../../../core/kits/tree.ts';
import { boundsOf, cornersOf, kitSubject, sizeOf } from './kit-checks.ts';

/** Numbers that are typed come out of the meshes within a millimetre, or as near as each line says. */
const within = (measured: number, typed: number, metres = 1e-3) =>
  expect(Math.abs(measured - typed), `${measured} for ${typed}`).toBeLessThanOrEqual(metres);

describe('drystone wall', () => {
  it.each([
    [6, 1.4, 0.5, 1],
    // scene S1 of the trade notes
    [10.8, 1.4, 0.5, 1],
    [2.3, 0.8, 0.35, 2],
    [17, 1.9, 0.9, 0],
  ])('%d m long and %d m high over the ground, %d m thick at its foot', (length, height, thickness, cope) => {
    const values = { lengthMetres: length, heightMetres: height, thicknessMetres: thickness, cope };
    const made = kitSubject(drystoneWall, values, 5);
    const { low, high } = boundsOf(made);
    // ends are jittered by up to 2 cm, faces by how far stones stand out, a top without cope by its joints
    within(high[0] - low[0], length, 0.03);
    within(high[1] - low[1], thickness, 0.01);
    within(high[2], height, cope === 0 ? 0.025 : 1e-3);
  });

  it('its stones are of the sizes of scene S1: 0.15-0.5 m long, 0.1-0.25 m high, 0.2-0.4 m deep (2 cm off at most)', () => {
    const made = kitSubject(drystoneWall, { lengthMetres: 10.8 }, 2);
    const stones = made.parts.flatMap((part) => (part.kind === 'loft' && part.name === 'Stone' ? [part] : []));
    expect(stones.length).toBeGreaterThan(200);
    for (const { sections } of stones) {
      const points = sections.flatMap(({ outline }) => outline);
      const span = (axis: 0 | 1) => Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
      expect(span(0)).toBeGreaterThan(0.13);
      expect(span(0)).toBeLessThan(0.54);
      expect(span(1)).toBeGreaterThan(0.08);
      // the lowest course goes 4 cm into the ground
      expect(span(1)).toBeLessThan(0.31);
      const depth = (sections.at(-1)?.northMetres ?? 0) - (sections[0]?.northMetres ?? 0);
      expect(depth).toBeGreaterThan(0.18);
      // stones at the ends, and high up where the wall is thin, go through it
      expect(depth).toBeLessThanOrEqual(0.5);
    }
  });
});

describe('hut', () => {
  it.each([
    [7, 5, 2.6, 33],
    [4.2, 3.1, 1.9, 50],
    [18, 9, 4, 15],
  ])('walls %d × %d m and %d m high, roof at %d degrees', (width, depth, eaves, pitch) => {
    const values = { widthMetres: width, depthMetres: depth, eavesMetres: eaves, pitchDegrees: pitch };
    const made = kitSubject(hut, values);
    const [east, north] = sizeOf(made, 'Front wall', 'Back wall', 'West gable', 'East gable');
    within(east, width);
    within(north, depth);
    const { low, high } = boundsOf(made, 'Front wall', 'Back wall');
    within(low[2], 0, 0);
    within(high[2], eaves);
    // gable over wall = half the depth times the tangent of the pitch
    within(boundsOf(made, 'West gable').high[2], eaves + (depth / 2) * Math.tan((pitch * Math.PI) / 180));
    const ridge = cornersOf(made, (name) => name === 'Roof');
    const top = ridge.reduce((best, p) => ((p[2] as number) > (best[2] as number) ? p : best));
    const edge = Math.max(...ridge.map((p) => Math.abs(p[1] as number)));
    const edgeTop = Math.max(
      ...ridge.filter((p) => Math.abs(Math.abs(p[1] as number) - edge) < 1e-6).map((p) => p[2] as number),
    );
    within((Math.atan2((top[2] as number) - edgeTop, edge) * 180) / Math.PI, pitch, 0.02);
  });

  it('doorway and window are as wide and high as typed', () => {
    const made = kitSubject(hut, {
      doorWidthMetres: 1.15,
      doorHeightMetres: 2.05,
      windowWidthMetres: 0.7,
      windowHeightMetres: 0.85,
    });
    const openings = made.parts.flatMap((part) => (part.kind === 'wall' ? part.openings : []));
    const sizes = openings.map(({ widthMetres, heightMetres }) => [widthMetres, heightMetres]);
    expect(sizes).toEqual([
      [1.15, 2.05],
      [0.7, 0.85],
    ]);
    expect(openings.map(({ sillMetres }) => sillMetres > 0)).toEqual([false, true]);
  });
});

describe('roofless chapel', () => {
  it.each([0, 0.5, 1])(
    'scene S4 of the trade notes, broken by %d: 10 × 6 m, walls to 4 m, gable to 7.5 m',
    (broken) => {
      const made = kitSubject(chapel, { broken }, 8);
      const built = ['Front wall', 'Back wall', 'West gable', 'East gable', 'Stone'];
      const [east, north] = sizeOf(made, ...built);
      within(east, 10);
      within(north, 6);
      within(boundsOf(made, 'East gable').high[2], 7.5);
      within(boundsOf(made, 'Front wall').high[2], 4);
      within(boundsOf(made, 'Back wall').high[2], 4);
    },
  );

  it('lancets are 0.5 × 2 m, the doorway 1.2 × 2.4 m', () => {
    const made = kitSubject(chapel);
    const size = (points: readonly (readonly [number, number])[], axis: 0 | 1) =>
      Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));
    const holes = made.parts.flatMap((part) => (part.kind === 'prism' ? part.holes : []));
    expect(holes.length).toBe(3);
    for (const hole of holes) {
      within(size(hole, 0), 0.5);
      within(size(hole, 1), 2);
    }
    const west = made.parts.flatMap((part) =>
      part.kind === 'prism' && part.name === 'West gable' ? [part.outline] : [],
    );
    // corners of the wall's outline that stand under its top and off its ends belong to the doorway
    const jambs = (west[0] ?? []).filter(([across, up]) => Math.abs(across) < 0.7 && up < 2.5);
    within(size(jambs, 0), 1.2);
    within(Math.max(...jambs.map(([, up]) => up)), 2.4);
  });
});

describe('standing stone', () => {
  it.each([
    [2.2, 0.9, 0.5, 0],
    [2.2, 0.9, 0.5, 5],
    [4.5, 1.6, 0.7, -12],
  ])('%d m high over the ground, %d m wide and %d m deep, leaning %d degrees', (height, width, depth, lean) => {
    const values = { heightMetres: height, widthMetres: width, depthMetres: depth, leanDegrees: lean };
    const made = kitSubject(standingStone, values, 4);
    within(boundsOf(made).high[2], height);
    // width and depth are those of the stone set upright
    const upright = { ...made, parts: made.parts.map((part) => ({ ...part, rollDegrees: 0 })) };
    within(sizeOf(upright)[0], width);
    within(sizeOf(upright)[1], depth);
    expect(made.parts.map(({ rollDegrees }) => rollDegrees)).toEqual([lean]);
  });
});

describe('carved slab', () => {
  it.each([
    [2.2, 1.2, 0.25],
    [1.1, 0.6, 0.12],
  ])('%d m high, %d m wide, %d m deep', (height, width, depth) => {
    const made = kitSubject(carvedSlab, { heightMetres: height, widthMetres: width, depthMetres: depth });
    const [east, north, up] = sizeOf(made);
    within(east, width, 1e-4);
    within(north, depth, 1e-4);
    within(up, height, 1e-4);
  });
});

describe('tree', () => {
  it.each([
    [8.5, 7, 0, 1e-3],
    [14, 9, 0, 1e-3],
    // ends of twigs stand out by their thickness
    [8.5, 7, 1, 0.012],
    [14, 9, 1, 0.012],
  ])('%d m high, crown %d m wide, kind %d (within %d m)', (height, crown, leaves, metres) => {
    const made = kitSubject(tree, { heightMetres: height, crownMetres: crown, leaves }, 6);
    const names = leaves === 1 ? ['Limb', 'Branch', 'Twig'] : ['Leaves'];
    within(sizeOf(made, ...names)[0], crown, metres);
    within(boundsOf(made).high[2], height, metres);
    if (leaves === 0) expect(boundsOf(made, 'Leaves').low[2]).toBeGreaterThan(4 - 0.35);
  });

  it('its trunk is as thick as typed, just over the roots (bark 4 cm)', () => {
    const made = kitSubject(tree, { trunkMetres: 0.9 });
    const at = cornersOf(made, (name) => name === 'Trunk').filter(([, , up]) => Math.abs((up as number) - 0.45) < 0.12);
    const east = at.map(([e]) => e as number);
    within(Math.max(...east) - Math.min(...east), 0.9, 0.08);
  });
});

describe('boulder pile', () => {
  it.each([
    // scene S8 of the trade notes
    [6, 6, 15],
    [9, 3, 25],
    [2, 1, 3],
  ])('%d m wide and %d m high, %d boulders', (width, height, count) => {
    const made = kitSubject(boulderPile, { widthMetres: width, heightMetres: height, count }, 2);
    within(sizeOf(made)[0], width);
    within(boundsOf(made).high[2], height);
    expect(made.parts.length).toBe(count);
  });

  it('scene S8: boulders of about 1 to 3 m', () => {
    for (const { position: _, ...part } of kitSubject(boulderPile, {}, 2).parts)
      if (part.kind === 'box') {
        const sizes = [part.widthMetres, part.depthMetres, part.heightMetres];
        expect(Math.max(...sizes)).toBeGreaterThan(1);
        expect(Math.max(...sizes)).toBeLessThan(4);
      }
  });
});

describe('natural arch', () => {
  it.each([
    // scene S6 of the trade notes: outer radius 11 m, tube 2.5 m
    [22, 11, 5, 5],
    [22, 6, 4, 2],
    [12, 15, 3, 2],
  ])('%d m wide and %d m high over all, legs %d m and top %d m thick', (width, height, leg, top) => {
    const made = kitSubject(naturalArch, { widthMetres: width, heightMetres: height, legMetres: leg, topMetres: top });
    within(sizeOf(made, 'Arch')[0], width);
    within(boundsOf(made, 'Arch').high[2], height);
    const ring = made.parts.flatMap((part) => (part.kind === 'ring' ? [part] : []))[0];
    within(ring?.tubeRadiusMetres ?? 0, leg / 2);
    within((ring?.tubeRadiusMetres ?? 0) * (ring?.topShare ?? 0), top / 2);
  });
});
