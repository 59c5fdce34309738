import { describe, expect, it } from 'vitest';
import { tapLens } from '../../../../app/web/bag/tap-lens.ts';
import { angleInPhoto } from '../../../../core/camera/angle-in-photo.ts';

const camera = {
  width: 6000,
  height: 4000,
  sensor: { widthMm: 36, heightMm: 24 },
  focalLengthMm: 24,
  typedDegrees: null,
};
const phone = { ...camera, width: 4000, height: 3000 };
const degree = Math.PI / 180;

describe('the lens of a photo of the spot', () => {
  it('a phone’s own 6.8 mm is taken by its equivalent of 24 mm: 73.7° over 36 mm, not 139° (2 atan(18 / 24))', () => {
    const { lens, degrees, from, isDoubtful } = tapLens({
      ...phone,
      settings: { focalLengthMm: 6.8, focalLength35Mm: 24 },
    });
    expect([from, isDoubtful]).toEqual(['equivalent', false]);
    expect(degrees).toBeCloseTo(73.74, 2);
    expect(angleInPhoto([0, 0.5], [1, 0.5], lens) / degree).toBeCloseTo(73.74, 2);
    // square pixels: the height of 3 : 4
    expect(lens.sensorHeightMm).toBeCloseTo(27, 10);
  });

  it('held upright the longer side is the height', () => {
    const settings = { focalLengthMm: 6.8, focalLength35Mm: 24 };
    const { lens } = tapLens({ ...phone, width: 3000, height: 4000, settings });
    expect([lens.sensorWidthMm, lens.sensorHeightMm]).toEqual([27, 36]);
  });

  it('without it the setup’s sensor is doubted where it would see over 100°, or has another shape; a typed view counts', () => {
    const settings = { focalLengthMm: 6.8, focalLength35Mm: null };
    expect(tapLens({ ...camera, settings })).toMatchObject({ from: 'setup', isDoubtful: true });
    expect(tapLens({ ...phone, settings: { ...settings, focalLengthMm: 35 } }).isDoubtful).toBe(true);
    expect(tapLens({ ...camera, settings: { ...settings, focalLengthMm: 35 } })).toMatchObject({ isDoubtful: false });
    expect(tapLens({ ...camera, settings: null }).lens.focalLengthMm).toBe(24);
    const typed = tapLens({ ...phone, settings, typedDegrees: 60 });
    expect(typed.isDoubtful).toBe(false);
    expect(angleInPhoto([0, 0.5], [1, 0.5], typed.lens) / degree).toBeCloseTo(60, 9);
  });
});
