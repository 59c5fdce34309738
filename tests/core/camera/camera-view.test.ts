import { describe, expect, it } from 'vitest';
import {
  type CameraView,
  cameraView,
  isInFrame,
  projectPoint,
  viewDirection,
} from '../../../core/camera/camera-view.ts';
import { add, dot, length, scale, type Vec3 } from '../../../core/geometry/vec.ts';

const view = (aim: Vec3, rollDegrees = 0, position: Vec3 = [1, 1.5, 2]): CameraView =>
  cameraView({
    position,
    aim,
    rollRadians: (rollDegrees * Math.PI) / 180,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm: 24,
  });

describe('cameraView', () => {
  it('looking north has east to the right and the sky up', () => {
    const { right, up, forward } = view([1, 1.5, -8]);
    expect(forward).toEqual([0, 0, -1]);
    expect(right[0]).toBeCloseTo(1, 12);
    expect(up[1]).toBeCloseTo(1, 12);
  });

  it('a roll of 90 degrees turns the camera clockwise: the picture’s right points to the ground', () => {
    const { right, up } = view([1, 1.5, -8], 90);
    expect(right[1]).toBeCloseTo(-1, 12);
    expect(up[0]).toBeCloseTo(1, 12);
  });

  it.each([
    [1, 9, 2],
    [1, -9, 2],
  ] as const)('straight up and down has north at the top (aim %d, %d, %d)', (...aim) => {
    const { up } = view(aim);
    expect(up[2]).toBeCloseTo(-1, 9);
  });

  it('right, up and forward are unit and square for any aim and roll (abs 1e-12)', () => {
    for (const aim of [
      [3, 0, -7],
      [-4, 6, 9],
      [1.001, -5, 2],
    ] as const)
      for (const roll of [0, 33, -120]) {
        const { right, up, forward } = view(aim, roll);
        for (const v of [right, up, forward]) expect(Math.abs(length(v) - 1)).toBeLessThanOrEqual(1e-12);
        for (const [a, b] of [
          [right, up],
          [up, forward],
          [forward, right],
        ] as const)
          expect(Math.abs(dot(a, b))).toBeLessThanOrEqual(1e-12);
      }
  });
});

describe('projectPoint', () => {
  it('undoes viewDirection at any distance (abs 1e-12)', () => {
    const camera = view([3, 0.4, -7], 20);
    for (const [x, y] of [
      [0, 0],
      [1, 1],
      [0.5, 0.5],
      [0.13, 0.88],
      [1.4, -0.3],
    ] as const)
      for (const metres of [0.2, 7, 300]) {
        const place = projectPoint(
          camera,
          add(camera.position, scale(viewDirection(camera, x, y), metres)),
        ) as readonly number[];
        expect(Math.abs((place[0] as number) - x)).toBeLessThanOrEqual(1e-12);
        expect(Math.abs((place[1] as number) - y)).toBeLessThanOrEqual(1e-12);
      }
  });

  it('puts the aim in the middle, the right edge 0.75 m out for each metre at 24 mm, and nothing behind the lens', () => {
    const camera = view([1, 1.5, -8]);
    expect(projectPoint(camera, [1, 1.5, -8])).toEqual([0.5, 0.5]);
    expect((projectPoint(camera, [1 + 7.5, 1.5, -8]) as readonly number[])[0]).toBeCloseTo(1, 12);
    expect((projectPoint(camera, [1, 1.5 + 5, -8]) as readonly number[])[1]).toBeCloseTo(0, 12);
    expect(projectPoint(camera, [1, 1.5, 3])).toBeNull();
    expect(isInFrame(camera, [8.4, 1.5, -8])).toBe(true);
    expect(isInFrame(camera, [8.6, 1.5, -8])).toBe(false);
    expect(isInFrame(camera, [1, 1.5, 3])).toBe(false);
  });
});
