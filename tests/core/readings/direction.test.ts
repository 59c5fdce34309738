import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { lampDirection, turnAround } from '../../../core/readings/direction.ts';
import { clockText } from '../../../core/units/clock.ts';

// camera 8 m south of the aim, both 1 m up; world axes: x east, y up, z south
const aim: Vec3 = [0, 1, -5];
const camera: Vec3 = [0, 1, 3];
const degrees = (radians: number) => (radians * 180) / Math.PI;

// places worked out by hand; the clock is common practice, no published source
describe('lampDirection', () => {
  it.each([
    ['beside the camera', [0, 1, 3], 0, '6:00', 0, 8],
    ['at three o’clock', [4, 1, -5], 90, '3:00', 0, 4],
    ['at nine o’clock', [-4, 1, -5], 90, '9:00', 0, 4],
    ['behind', [0, 1, -11], 180, '12:00', 0, 6],
    ['half past four', [2, 1, -3], 45, '4:30', 0, Math.sqrt(8)],
    ['half past one', [2, 1, -7], 135, '1:30', 0, Math.sqrt(8)],
    ['half past ten', [-2, 1, -7], 135, '10:30', 0, Math.sqrt(8)],
    ['at three o’clock, as high as far', [3, 4, -5], 90, '3:00', 45, Math.sqrt(18)],
    ['over the camera, as high as far', [0, 9, 3], 45, '6:00', 45, Math.sqrt(128)],
    ['straight above', [0, 4, -5], 90, null, 90, 3],
    ['below the aim at nine', [-1, 0, -5], 90, '9:00', -45, Math.sqrt(2)],
    ['two o’clock', [Math.sqrt(3), 1, -6], 120, '2:00', 0, 2],
  ] as const)('%s', (_, lamp, offAxis, clock, elevation, metres) => {
    const direction = lampDirection(aim, camera, lamp as Vec3);
    expect(degrees(direction.offAxisRadians)).toBeCloseTo(offAxis, 9);
    if (clock) expect(clockText(direction.clockHours)).toBe(clock);
    expect(degrees(direction.elevationRadians)).toBeCloseTo(elevation, 9);
    expect(direction.distanceMetres).toBeCloseTo(metres, 12);
  });

  it('depends only on how the three stand to each other, not on which way the camera looks (abs 1e-9)', () => {
    const [c, s] = [Math.cos(0.7), Math.sin(0.7)];
    const turned = ([x, y, z]: Vec3): Vec3 => [c * x - s * z + 40, y, s * x + c * z - 13];
    for (const lamp of [
      [3, 2, -6],
      [-1, 0.2, -9],
      [5, 1, 2],
    ] as const) {
      const [a, b] = [lampDirection(aim, camera, lamp), lampDirection(turned(aim), turned(camera), turned(lamp))];
      expect(Math.abs(a.offAxisRadians - b.offAxisRadians)).toBeLessThanOrEqual(1e-9);
      expect(Math.abs(a.clockHours - b.clockHours)).toBeLessThanOrEqual(1e-9);
    }
  });
});

describe('turnAround', () => {
  it('is positive to the camera’s right and lies in (-pi, pi] (abs 1e-12)', () => {
    expect(turnAround(aim, camera, [4, 1, -5])).toBeCloseTo(Math.PI / 2, 12);
    expect(turnAround(aim, camera, [-4, 1, -5])).toBeCloseTo(-Math.PI / 2, 12);
    expect(Math.abs(turnAround(aim, camera, [0, 1, -9]))).toBeCloseTo(Math.PI, 12);
  });
});
