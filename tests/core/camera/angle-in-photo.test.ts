import { describe, expect, it } from 'vitest';
import { angleInPhoto } from '../../../core/camera/angle-in-photo.ts';

const lens = { focalLengthMm: 24, sensorWidthMm: 36, sensorHeightMm: 24 };
const degrees = (radians: number) => (radians * 180) / Math.PI;

describe('angleInPhoto', () => {
  it('edge to edge is the field of view of 24 mm on 36 × 24 mm: 73.74° across, 53.13° down, 84.06° cornerwise (pinhole, 2 atan (d / 2f), 0.01°)', () => {
    expect(degrees(angleInPhoto([0, 0.5], [1, 0.5], lens))).toBeCloseTo(73.74, 2);
    expect(degrees(angleInPhoto([0.5, 0], [0.5, 1], lens))).toBeCloseTo(53.13, 2);
    expect(degrees(angleInPhoto([0, 0], [1, 1], lens))).toBeCloseTo(84.06, 2);
  });
  it('is nought for one place and the same there and back', () => {
    expect(angleInPhoto([0.2, 0.7], [0.2, 0.7], lens)).toBe(0);
    expect(angleInPhoto([0.2, 0.7], [0.9, 0.1], lens)).toBe(angleInPhoto([0.9, 0.1], [0.2, 0.7], lens));
  });
});
