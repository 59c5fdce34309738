import { describe, expect, it } from 'vitest';
import { angleBetween, distance, dot, normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import type { Scan } from '../../../core/setup/schema/setup.ts';
import { meterReceiver } from '../../../core/trace/meter.ts';
import { type SurfacePoint, surfaceAlong, surfaceOffset } from '../../../core/trace/surface-point.ts';
import { buildStage } from '../../../core/world/stage.ts';
import { bareGround, discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

const [radius, centre] = [1, [0, 3, -6] as Vec3];
const ball = (sides: number) =>
  stageWith(subjectOf('ball', [{ kind: 'sphere', position: [0, 6, 2], radiusMetres: radius, sides }]));
const eye: Vec3 = [0, 3, 6];

/** Surface points seen along a line across the ball's middle, west to east. */
const across = (sides: number, count: number, y = 0): SurfacePoint[] => {
  const stage = ball(sides);
  return Array.from({ length: count }, (_, k) => {
    const x = 0.97 * radius * ((2 * k) / (count - 1) - 1);
    return surfaceAlong(stage, eye, normalize(sub([x, centre[1] + y, centre[2]], eye)));
  }).filter((point): point is SurfacePoint => point?.subject === 0);
};

describe('surfaceAlong on a scan with colours', () => {
  // a square of 1 m at 1 m height, half of it white and half black: the white is twice as bright as the mean
  const packed = encodeScan({
    positions: Float64Array.of(-0.5, 0, 0.5, 0.5, 0, 0.5, 0.5, 0, -0.5, -0.5, 0, -0.5),
    indices: Uint32Array.of(0, 1, 2, 0, 2, 3),
    colours: Uint8Array.of(255, 255, 255, 0, 0, 0),
  });
  const scan: Scan = {
    id: 'square',
    name: 'Square',
    fileName: 'square.ply',
    ...packed,
    sizeMetres: [...packed.sizeMetres] as Scan['sizeMetres'],
  };
  const part = { kind: 'scan', scanId: 'square', position: [0, 0, 1] };
  const reflectances = (reflectance: number) => {
    const square = subjectOf('square', [part], { finish: { reflectance } });
    const post = subjectOf('post', [{ kind: 'box', widthMetres: 1, depthMetres: 1, heightMetres: 2 }], {
      position: [3, 0, 0],
      finish: { reflectance },
    });
    const stage = buildStage(bareGround, [square, post], [scan]);
    const under = (x: number, z: number) => surfaceAlong(stage, [x, 5, z], [0, -1, 0])?.reflectance;
    return { white: under(0.2, 0.1), black: under(-0.2, -0.1), post: under(3, 0), ground: under(-3, 0) };
  };

  it('each triangle returns the finish’s share times its colour over the mean; what has no colours returns the share', () => {
    const { white, black, post, ground } = reflectances(0.3);
    for (const c of [0, 1, 2]) expect(white?.[c]).toBeCloseTo(0.6, 6);
    expect(black).toEqual([0, 0, 0]);
    expect(post).toEqual([0.3, 0.3, 0.3]);
    expect(ground).toEqual([0.18, 0.18, 0.18]);
  });

  it('never more than all of the light', () => {
    expect(reflectances(0.8).white).toEqual([1, 1, 1]);
  });
});

describe('surfaceAlong', () => {
  it('finds the ground straight below: place, normal, reflectance, distance (abs 1e-9)', () => {
    const point = surfaceAlong(stageWith(), [2, 1.5, -3], [0, -1, 0]) as SurfacePoint;
    expect(distance(point.position, [2, 0, -3])).toBeLessThanOrEqual(1e-9);
    expect(point.normal).toEqual([0, 1, 0]);
    expect(point.reflectance).toEqual([0.18, 0.18, 0.18]);
    expect(point.subject).toBe(-1);
    expect(point.distance).toBeCloseTo(1.5, 12);
    expect(point.shadowOrigin[1]).toBeCloseTo(surfaceOffset(point.position), 12);
    expect(distance(point.place, point.position)).toBeLessThanOrEqual(1e-12);
  });

  it('sees nothing in the sky', () => {
    expect(surfaceAlong(stageWith(), [0, 1.5, 0], [0, 1, 0])).toBeNull();
  });

  it('turns the normal to the side that is looked at, below the ground too', () => {
    const point = surfaceAlong(stageWith(), [0, -1, 0], [0, 1, 0]) as SurfacePoint;
    expect(point.normal[1]).toBe(-1);
    expect(point.shadowOrigin[1]).toBeLessThan(0);
  });

  it('on a 32-sided ball the normal is the ball’s own within 1 degree, though the faces are 11 degrees apart', () => {
    const points = across(32, 61, 0.31);
    expect(points.length).toBeGreaterThan(50);
    const errors = points.map(({ position, normal }) => angleBetween(normal, sub(position, centre)));
    expect(Math.max(...errors) * (180 / Math.PI)).toBeLessThanOrEqual(1);
  });

  it('lifts the place of light off the flat faces, no farther outside the ball than they lie inside (16 sides)', () => {
    const points = across(16, 201, 0.13);
    const off = (p: Vec3) => Math.abs(distance(p, centre) - radius);
    const flat = points.map(({ position }) => off(position));
    const lifted = points.map(({ place }) => off(place));
    expect(Math.max(...flat)).toBeGreaterThan(0.01);
    expect(Math.max(...lifted)).toBeLessThanOrEqual(Math.max(...flat));
    expect(Math.min(...points.map(({ place }) => distance(place, centre)))).toBeGreaterThan(
      radius - Math.max(...flat) / 4,
    );
    for (const { place, position, normal } of points)
      expect(dot(sub(place, position), normal)).toBeGreaterThanOrEqual(-1e-7);
  });
});

describe('light that grazes a coarse ball', () => {
  // Lambert's cosine law on a true ball: from the brightest place the light falls without a step to nothing at the terminator
  it.each([
    ['side', [-400, 3, -6], 0],
    ['side and behind', [-400, 3, -206], 0],
    ['side and above', [-400, 203, -6], 0.3],
    ['side, off the equator', [-400, 3, -6], -0.4],
  ] as const)(
    '16 sides, far lamp from the %s: no dark steps before the terminator (2 % of the brightest)',
    (_, lamp, y) => {
      const stage = ball(16);
      const source = standing(lamp, centre, discEmitter(0, halfSpaceBeam));
      const points = across(16, 400, y);
      const light = points.map((point) => meterReceiver(stage, source, point, 1));
      const brightest = Math.max(...light);
      expect(brightest).toBeGreaterThan(0);
      const cosines = points.map(({ normal, place }) => Math.max(dot(normal, normalize(sub(lamp, place))), 0));
      // each point is lit as its normal says: nothing of the ball's own corners shades it
      const steps = light.map((v, k) => Math.abs(v / brightest - (cosines[k] as number) / Math.max(...cosines)));
      expect(Math.max(...steps)).toBeLessThanOrEqual(0.02);
      // and it falls smoothly: no rise above a running minimum on the way from the brightest place to the dark side
      const [from] = [light.indexOf(brightest)];
      let least = brightest;
      for (const v of light.slice(from)) {
        expect(v - least).toBeLessThanOrEqual(0.02 * brightest);
        least = Math.min(least, v);
      }
      expect(least).toBe(0);
    },
  );
});
