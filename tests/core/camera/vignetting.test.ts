import { describe, expect, it } from 'vitest';
import { cameraView, viewDirection } from '../../../core/camera/camera-view.ts';
import { cosFourth } from '../../../core/camera/vignetting.ts';
import { dot } from '../../../core/geometry/vec.ts';
import { relativeError } from '../support/errors.ts';

const view = cameraView({
  position: [0, 1.5, 0],
  aim: [2, 0.4, -7],
  rollRadians: 0.3,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 14,
});

describe('cosFourth', () => {
  it('is 1 on the axis and 1/4 at 45 degrees, across and up (abs 1e-15)', () => {
    const wide = { tanHalfWidth: 1, tanHalfHeight: 1 };
    expect(cosFourth(wide, 0.5, 0.5)).toBe(1);
    for (const [x, y] of [
      [0, 0.5],
      [1, 0.5],
      [0.5, 0],
      [0.5, 1],
    ] as const)
      expect(Math.abs(cosFourth(wide, x, y) - 0.25)).toBeLessThanOrEqual(1e-15);
  });

  it('is the fourth power of the cosine between the ray of that place and the axis (rel 1e-12)', () => {
    for (const x of [0, 0.2, 0.5, 0.93])
      for (const y of [0, 0.4, 1]) {
        const cosine = dot(viewDirection(view, x, y), view.forward);
        expect(relativeError(cosFourth(view, x, y), cosine ** 4)).toBeLessThanOrEqual(1e-12);
      }
  });
});
