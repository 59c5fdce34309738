import { describe, expect, it } from 'vitest';
import { projectToGround } from '../../core/geometry/shadow.ts';
import { normalize, sub, type Vec3 } from '../../core/geometry/vec.ts';
import { meter } from '../../core/trace/meter.ts';
import type { Source } from '../../core/world/world.ts';
import { meanMoonRadiusRadians } from '../../core/world/world.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Shadows');
const triangles = 'similar triangles, computed';
const south: Vec3 = [0, 0, 1];
const samples = 4096;
const open = stageWith();

/** Where a falling quantity drops below a level, by halving, to a millionth of the way searched. */
const crossing = (value: (x: number) => number, level: number, high: number, low: number): number => {
  let [a, b] = [high, low];
  for (let n = 0; n < 20; n++) {
    const middle = (a + b) / 2;
    if (value(middle) > level) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};

describe('ground shadows', () => {
  it.each([
    ['8a', 6, 1.8, 3, 1.285714, 5e-7],
    ['8b', 2, 1, 4, 4, 0],
  ])(
    '%s: lamp %d m up, thing %d m high, %d m away: %d m long (abs %d)',
    (id, lamp, thing, away, expected, absolute) => {
      check({
        id,
        claim: `shadow of a thing ${thing} m high, ${away} m from a lamp ${lamp} m up`,
        source: triangles,
        unit: 'm',
        expected,
        ours: (projectToGround([0, lamp, 0], [away, thing, 0])?.[0] ?? Number.NaN) - away,
        tolerance: { absolute },
      });
    },
  );

  it('8b: the tip of that shadow lies 8 m from the lamp’s foot, on the ground (exact)', () => {
    const tip = projectToGround([0, 2, 0], [4, 1, 0]);
    check({
      id: '8b',
      claim: 'tip of that shadow from the lamp’s foot',
      source: triangles,
      unit: 'm',
      expected: 8,
      ours: tip?.[0] ?? Number.NaN,
      tolerance: { absolute: 0 },
    });
    expect(tip).toEqual([8, 0, 0]);
  });

  it('8d: lamp at (0, 0, 3), corner at (1, 0.5, 1.5) [east, north, up]: shadow at (2, 1, 0) (exact)', () => {
    const shadow = projectToGround([0, 3, 0], [1, 1.5, -0.5]);
    const east = shadow?.[0] ?? Number.NaN;
    const row = { id: '8d', source: triangles, unit: 'm', tolerance: { absolute: 0 } };
    check({ ...row, claim: 'shadow of a corner on the ground, east', expected: 2, ours: east });
    check({
      ...row,
      claim: 'shadow of a corner on the ground, north',
      expected: 1,
      ours: -(shadow?.[2] ?? Number.NaN),
    });
    expect(shadow?.[1]).toBe(0);
  });

  it.each([
    [1, 1],
    [0.4, 1],
  ])('8i: lamp %d m up, thing %d m: the shadow never ends', (lamp, thing) => {
    expect(projectToGround([0, lamp, 0], [3, thing, 0])).toBeNull();
  });
});

describe('shadow on a wall', () => {
  it('8c: a slat 0.5 m wide, 2 m from the lamp, throws a shadow 1.25 m wide 5 m from it, by traced rays (abs 1e-4 m)', () => {
    // the front of the slat, which faces the lamp, stands 2 m from it
    const slat = subjectOf('slat', [
      { kind: 'box', position: [0, 2.0005, 0], widthMetres: 0.5, depthMetres: 0.001, heightMetres: 4 },
    ]);
    const stage = stageWith(slat);
    const lamp = standing([0, 2, 0], [0, 2, -1], discEmitter(0));
    const light = (x: number) => meter(stage, lamp, [x, 2, -5], south, 1);
    check({
      id: '8c',
      claim: 'width on a wall 5 m off of the shadow of a slat 0.5 m wide, 2 m off, traced',
      source: triangles,
      unit: 'm',
      expected: 1.25,
      ours: crossing(light, 0, 2, 0) + crossing((x) => light(-x), 0, 2, 0),
      // the ray to the lamp starts 0.06 mm off the wall
      tolerance: { absolute: 1e-4 },
    });
  });
});

describe('penumbra of a disc lamp', () => {
  const [sourceWidth, a, b] = [0.05, 2, 4];
  const fence = subjectOf('fence', [
    // its west edge lies on x = 0, 2 m north of the lamp
    { kind: 'box', position: [1.5, a, 0], widthMetres: 3, depthMetres: 1e-3, heightMetres: 6 },
  ]);
  const stage = stageWith(fence);
  const lamp = standing([0, 2, 0], [0, 2, -1], discEmitter(sourceWidth / 2));
  const share = (x: number) => {
    const point: Vec3 = [x, 2, -(a + b)];
    return meter(stage, lamp, point, south, samples) / meter(open, lamp, point, south, samples);
  };

  it('8e: s = 0.05 m, a = 2 m, b = 4 m: 0.10 m wide, from first dimming to dark (3 %: the last slivers get few samples)', () => {
    const starts = crossing(share, 1 - 1.5 / samples, -0.2, 0.2);
    const ends = crossing(share, 1.5 / samples, -0.2, 0.2);
    check({
      id: '8e',
      claim: 'penumbra of a lamp 0.05 m wide, edge 2 m off, wall 4 m behind it, traced',
      source: 'geometric unsharpness f b / a of radiography',
      unit: 'm',
      expected: 0.1,
      ours: ends - starts,
      tolerance: { relative: 0.03 },
    });
  });

  it.each([-0.9, -0.5, 0, 0.4, 0.8])(
    'at %d of its half width the light is the disc’s free segment (abs 0.005)',
    (u) => {
      check({
        id: '8e',
        claim: `light at ${u} of the half width of that penumbra, traced`,
        source: 'area of a segment of a circle, first principles',
        unit: '',
        expected: 0.5 - (u * Math.sqrt(1 - u * u) + Math.asin(u)) / Math.PI,
        ours: share(u * 0.05),
        tolerance: { absolute: 0.005 },
      });
    },
  );
});

describe('penumbra on the ground', () => {
  it('8e: the top of a wall, lamp 0.02 m wide, along the ground: s b / (a sin) (3 %)', () => {
    const [lampHeight, top, toWall, width] = [3, 1.5, 2, 0.02];
    const wall = subjectOf('wall', [
      { kind: 'box', position: [0, toWall - 5e-4, 0], widthMetres: 20, depthMetres: 1e-3, heightMetres: top },
    ]);
    const stage = stageWith(wall);
    const position: Vec3 = [0, lampHeight, 0];
    const tip: Vec3 = [0, 0, -(toWall * lampHeight) / (lampHeight - top)];
    const lamp = standing(position, tip, discEmitter(width / 2));
    const share = (z: number) => {
      const point: Vec3 = [0, 0, -z];
      return meter(stage, lamp, point, [0, 1, 0], samples) / meter(open, lamp, point, [0, 1, 0], samples);
    };
    // the wall's top halves the way, so b / a = 1
    const sine = lampHeight / Math.hypot(tip[2], lampHeight);
    const lit = crossing(share, 1 - 1.5 / samples, -tip[2] + 0.2, -tip[2]);
    const dark = crossing(share, 1.5 / samples, -tip[2], -tip[2] - 0.2);
    expect(normalize(sub(tip, position))[1]).toBeCloseTo(-sine, 12);
    check({
      id: '8e',
      claim: 'penumbra of a wall’s top along the ground, lamp 0.02 m wide, traced',
      source: 'geometric unsharpness f b / a over the sine of the ray’s angle',
      unit: 'm',
      expected: width / sine,
      ours: lit - dark,
      tolerance: { relative: 0.03 },
    });
  });
});

describe('penumbra of the Moon', () => {
  it('8h: a post’s edge throws 9.04 mm of half shadow for each metre behind it (2 %)', () => {
    const behind = 1;
    const post = subjectOf('post', [
      { kind: 'box', position: [1, 0, 0], widthMetres: 2, depthMetres: 1e-3, heightMetres: 4 },
    ]);
    const stage = stageWith(post);
    // a degree up, so that the whole disc clears the horizon
    const toward = normalize([0, Math.tan(Math.PI / 180), 1]);
    const moon: Source = { kind: 'moon', toward, radiusRadians: meanMoonRadiusRadians };
    const light = (x: number) => meter(stage, moon, [x, 2, -behind], toward, samples);
    const lit = crossing(light, 1 - 1.5 / samples, -0.05, 0);
    const dark = crossing(light, 1.5 / samples, 0, 0.05);
    check({
      id: '8h',
      claim: 'half shadow of the Moon, 0.518 degrees wide, a metre behind an edge, traced',
      source: 'diameter of the Moon, computed',
      unit: 'mm',
      expected: 9.04,
      ours: 1000 * (dark - lit),
      tolerance: { relative: 0.02 },
    });
  });
});
