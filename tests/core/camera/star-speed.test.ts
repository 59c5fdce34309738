import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import { starSpeed } from '../../../core/camera/star-speed.ts';
import { add, cross, dot, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import { relativeError } from '../support/errors.ts';

/** Earth's turn in radians a second: 7.292115e-5 (IERS conventions). */
const turn = 7.292115e-5;
const north: Vec3 = [0, 0, -1];
const lens = { rollRadians: 0.3, sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm: 24 };
const at = (hourAngle: number, declination: number): Vec3 => [
  Math.cos(declination) * Math.sin(hourAngle),
  Math.cos(declination) * Math.cos(hourAngle),
  -Math.sin(declination),
];
const degrees = (d: number) => (d * Math.PI) / 180;

describe('starSpeed', () => {
  it.each([0, -29, 60, 89])('in the middle of the picture is w cos(declination): %d degrees (rel 1e-5)', (d) => {
    const forward = at(0.4, degrees(d));
    const view = cameraView({ position: [0, 0, 0], aim: forward, ...lens });
    expect(relativeError(starSpeed(view, forward, north), turn * Math.cos(degrees(d)))).toBeLessThanOrEqual(1e-5);
  });

  it.each([10, 30, 45])(
    'q = %d degrees off the axis is w / cos^2 q outwards along the equator, and w across it at declination q (rel 1e-5)',
    (q) => {
      // geometry of the tangent plane: d(tan q) = dq / cos^2 q; across, cos(declination) / cos q = 1
      const view = cameraView({ position: [0, 0, 0], aim: at(0, 0), ...lens });
      expect(
        relativeError(starSpeed(view, at(degrees(q), 0), north), turn / Math.cos(degrees(q)) ** 2),
      ).toBeLessThanOrEqual(1e-5);
      expect(relativeError(starSpeed(view, at(0, degrees(q)), north), turn)).toBeLessThanOrEqual(1e-5);
    },
  );

  it('is how far the projected place of a star moves when the sky is turned by 0.01 degrees (Rodrigues; rel 1e-3)', () => {
    const view = cameraView({ position: [0, 0, 0], aim: at(0.5, 0.6), ...lens });
    const angle = degrees(0.01);
    const rotated = (v: Vec3): Vec3 =>
      add(
        add(scale(v, Math.cos(angle)), scale(cross(north, v), Math.sin(angle))),
        scale(north, dot(north, v) * (1 - Math.cos(angle))),
      );
    for (const star of [at(0.5, 0.6), at(0.1, 0.9), at(0.9, 0.2), at(0.6, 1.1)]) {
      const [a, b] = [star, rotated(star)].map((v) => projectPoint(view, v)) as [
        readonly [number, number],
        readonly [number, number],
      ];
      const moved = Math.hypot((b[0] - a[0]) * 2 * view.tanHalfWidth, (b[1] - a[1]) * 2 * view.tanHalfHeight);
      expect(relativeError(starSpeed(view, star, north), (moved / angle) * turn)).toBeLessThanOrEqual(1e-3);
    }
  });
});
