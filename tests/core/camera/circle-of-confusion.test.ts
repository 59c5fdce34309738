import { describe, expect, it } from 'vitest';
import { cocOfPixelMm, cocOfSensorMm } from '../../../core/camera/circle-of-confusion.ts';

describe('circle of confusion', () => {
  it('grows with the sensor’s diagonal: half the sensor, half the circle; turned on its side, the same (rel 1e-12)', () => {
    expect(cocOfSensorMm(36, 24) / cocOfSensorMm(18, 12)).toBeCloseTo(2, 12);
    expect(cocOfSensorMm(24, 36)).toBe(cocOfSensorMm(36, 24));
  });

  it('of the pixel is two pixels: 0.012 mm at 6 micrometres (abs 1e-12), less than half of the print’s', () => {
    expect(cocOfPixelMm(6)).toBeCloseTo(0.012, 12);
    expect(cocOfPixelMm(6)).toBeLessThan(cocOfSensorMm(36, 24) / 2);
  });
});
