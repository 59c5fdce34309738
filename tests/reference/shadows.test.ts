import { describe, expect, it } from 'vitest';
import { groundShadowLength, projectToGround } from '../../core/geometry/shadow.ts';
import { normalize, sub, type Vec3 } from '../../core/geometry/vec.ts';
import { meter } from '../../core/trace/meter.ts';
import type { Source } from '../../core/world/world.ts';
import { relativeError } from '../core/support/errors.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../core/support/scenes.ts';

const south: Vec3 = [0, 0, 1];
const samples = 4096;

/** Where a falling quantity drops below a level, by halving. */
const crossing = (value: (x: number) => number, level: number, high: number, low: number): number => {
  let [a, b] = [high, low];
  for (let n = 0; n < 40; n++) {
    const middle = (a + b) / 2;
    if (value(middle) > level) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
};

// Similar triangles, computed (rows 8a, 8b, 8d, 8i)
describe('ground shadows', () => {
  it('8a: lamp 6 m up, thing 1.8 m, 3 m away: 1.285714 m (abs 1e-6)', () => {
    expect(Math.abs(groundShadowLength(6, 1.8, 3) - 1.285714)).toBeLessThanOrEqual(1e-6);
  });
  it('8b: lamp 2 m up, thing 1 m, 4 m away: 4 m (exact), tip 8 m from the lamp’s foot', () => {
    expect(groundShadowLength(2, 1, 4)).toBe(4);
    expect(projectToGround([0, 2, 0], [4, 1, 0])).toEqual([8, 0, 0]);
  });
  it('8d: lamp at (0, 0, 3), corner at (1, 0.5, 1.5) [east, north, up]: shadow at (2, 1, 0) (exact)', () => {
    expect(projectToGround([0, 3, 0], [1, 1.5, -0.5])).toEqual([2, 0, -1]);
  });
  it.each([
    [1, 1],
    [0.4, 1],
  ])('8i: lamp %d m up, thing %d m: the shadow never ends', (lamp, thing) => {
    expect(groundShadowLength(lamp, thing, 3)).toBe(Number.POSITIVE_INFINITY);
    expect(projectToGround([0, lamp, 0], [3, thing, 0])).toBeNull();
  });
});

// M = (a + b) / a, computed (row 8c)
describe('shadow on a wall', () => {
  it('8c: a slat 0.5 m wide, 2 m from the lamp, throws a shadow 1.25 m wide 5 m from it, by traced rays (abs 1e-4 m)', () => {
    const slat = subjectOf('slat', [
      { kind: 'box', position: [0, 2.0005, 0], widthMetres: 0.5, depthMetres: 0.001, heightMetres: 4 },
    ]);
    const stage = stageWith(slat);
    const lamp = standing([0, 2, 0], [0, 2, -1], discEmitter(0));
    const light = (x: number) => meter(stage, lamp, [x, 2, -5], south, 1);
    const east = crossing(light, 0, 2, 0);
    const west = crossing((x) => light(-x), 0, 2, 0);
    expect(Math.abs(east + west - 1.25)).toBeLessThanOrEqual(1e-4);
  });
});

// U = f b / a, geometric unsharpness of radiography; number computed (row 8e)
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
    return meter(stage, lamp, point, south, samples) / meter(stageWith(), lamp, point, south, samples);
  };

  it('8e: s = 0.05 m, a = 2 m, b = 4 m: 0.10 m wide, from first dimming to dark (5 %)', () => {
    const starts = crossing(share, 1 - 1.5 / samples, -0.2, 0.2);
    const ends = crossing(share, 1.5 / samples, -0.2, 0.2);
    expect(relativeError(ends - starts, (sourceWidth * b) / a)).toBeLessThanOrEqual(0.05);
  });

  // the part of a disc that a straight edge leaves free: first principles
  it.each([-0.9, -0.5, 0, 0.4, 0.8])('at %d of its half width the light is the disc’s free segment (abs 0.01)', (u) => {
    const free = 0.5 - (u * Math.sqrt(1 - u * u) + Math.asin(u)) / Math.PI;
    expect(Math.abs(share(u * 0.05) - free)).toBeLessThanOrEqual(0.01);
  });
});

describe('penumbra on the ground', () => {
  // the same, divided by the sine of the angle between ray and ground (note below the table)
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
      return meter(stage, lamp, point, [0, 1, 0], samples) / meter(stageWith(), lamp, point, [0, 1, 0], samples);
    };
    const ray = Math.hypot(tip[2], lampHeight);
    const [a, b] = [ray * 0.5, ray * 0.5];
    const sine = lampHeight / ray;
    const lit = crossing(share, 1 - 1.5 / samples, -tip[2] + 0.2, -tip[2]);
    const dark = crossing(share, 1.5 / samples, -tip[2], -tip[2] - 0.2);
    expect(normalize(sub(tip, position))[1]).toBeCloseTo(-sine, 12);
    expect(relativeError(lit - dark, (width * b) / a / sine)).toBeLessThanOrEqual(0.03);
  });
});

// Diameter of the Moon 0.518 degrees; computed (row 8h)
describe('penumbra of the Moon', () => {
  it('8h: a post’s edge throws 9.04 mm of half shadow for each metre behind it (2 %)', () => {
    const behind = 1;
    const post = subjectOf('post', [
      { kind: 'box', position: [1, 0, 0], widthMetres: 2, depthMetres: 1e-3, heightMetres: 4 },
    ]);
    const stage = stageWith(post);
    // a degree up, so that the whole disc clears the horizon
    const toward = normalize([0, Math.tan(Math.PI / 180), 1]);
    const moon: Source = { kind: 'moon', toward };
    const light = (x: number) => meter(stage, moon, [x, 2, -behind], toward, samples);
    const lit = crossing(light, 1 - 1.5 / samples, -0.05, 0);
    const dark = crossing(light, 1.5 / samples, 0, 0.05);
    expect(relativeError(1000 * (dark - lit), 9.04)).toBeLessThanOrEqual(0.02);
  });
});
