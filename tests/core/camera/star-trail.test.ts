import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import { siderealRadiansPerSecond, trailPixels } from '../../../core/camera/star-trail.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { relativeError } from '../support/errors.ts';

const [focalLengthMm, pitchMicrometres, sensorWidthMm, sensorHeightMm] = [14, 6, 36, 24];
const view = cameraView({
  position: [0, 0, 0],
  aim: [0, 0, -1],
  rollRadians: 0,
  sensorWidthMm,
  sensorHeightMm,
  focalLengthMm,
});

/** Length in pixels that a direction draws while it turns by a small angle, by projecting both ends. */
const drawnPixels = (from: Vec3, to: Vec3): number => {
  const [a, b] = [projectPoint(view, from), projectPoint(view, to)];
  if (!a || !b) throw new Error('behind the lens');
  return (Math.hypot((b[0] - a[0]) * sensorWidthMm, (b[1] - a[1]) * sensorHeightMm) * 1000) / pitchMicrometres;
};

describe('trailPixels', () => {
  it('grows with focal length and time, shrinks with the pitch, and halves at 60 degrees of declination (rel 1e-12)', () => {
    const one = trailPixels(20, 10, 5, 0);
    for (const [changed, factor] of [
      [trailPixels(60, 10, 5, 0), 3],
      [trailPixels(20, 30, 5, 0), 3],
      [trailPixels(20, 10, 2.5, 0), 2],
      [trailPixels(20, 10, 5, Math.PI / 3), 0.5],
      [trailPixels(20, 10, 5, -Math.PI / 3), 0.5],
    ] as const)
      expect(relativeError(changed / one, factor)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(trailPixels(20, 10, 5, Math.PI / 2))).toBeLessThanOrEqual(1e-12);
  });

  it('is what the camera draws of a star that turns in the middle of the picture for 20 s (rel 1e-5)', () => {
    const turn = siderealRadiansPerSecond * 20;
    const drawn = drawnPixels(
      [-Math.sin(turn / 2), 0, -Math.cos(turn / 2)],
      [Math.sin(turn / 2), 0, -Math.cos(turn / 2)],
    );
    expect(relativeError(drawn, trailPixels(focalLengthMm, 20, pitchMicrometres, 0))).toBeLessThanOrEqual(1e-5);
  });

  it.each([20, 40, 50])(
    'at %d degrees off the axis is 1/cos^2 longer outwards and 1/cos across (rel 1e-4)',
    (degrees) => {
      const q = (degrees * Math.PI) / 180;
      const half = siderealRadiansPerSecond * 10;
      const middle = trailPixels(focalLengthMm, 20, pitchMicrometres, 0);
      const along = (a: number): Vec3 => [Math.sin(q + a), 0, -Math.cos(q + a)];
      const across = (a: number): Vec3 => [Math.sin(q) * Math.cos(a), Math.sin(a), -Math.cos(q) * Math.cos(a)];
      expect(relativeError(drawnPixels(along(-half), along(half)), middle / Math.cos(q) ** 2)).toBeLessThanOrEqual(
        1e-4,
      );
      expect(relativeError(drawnPixels(across(-half), across(half)), middle / Math.cos(q))).toBeLessThanOrEqual(1e-4);
    },
  );
});
