import { describe, expect, it } from 'vitest';
import { blurPixels, sharpestBlur } from '../../core/readings/blur-reading.ts';
import type { Camera } from '../../core/setup/schema/setup.ts';
import { exactFNumber } from '../../core/units/third-stops.ts';
import { onePassSetup } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Blur circle');
const source = 'thin-lens equation 1/f = 1/s + 1/v (Gauss) and similar triangles behind the lens';

/** 36 x 24 mm of 6000 x 4000 pixels: 0.006 mm each. */
const cameraOf = (focalLengthMm: number): Camera =>
  onePassSetup({
    camera: {
      position: [0, 0, 1.5],
      aim: [0, 10, 1.5],
      focalLengthMm,
      sensor: { widthMm: 36, heightMm: 24, pixelsWide: 6000, pixelsHigh: 4000 },
    },
    pass: { waypoints: [{ position: [3, 0, 1], aim: [0, 8, 1] }] },
  }).camera as Camera;

/** Where the image of a point so far off lies behind the lens, mm. */
const imageMm = (f: number, atMm: number): number => (Number.isFinite(atMm) ? (f * atMm) / (atMm - f) : f);

/** The cone from the opening f/N to its image, cut by the sensor: (f/N) |v - v'| / v', in pixels of 0.006 mm. */
const byHand = (f: number, aperture: number, focusMetres: number, atMetres: number): number => {
  const sensor = imageMm(f, focusMetres * 1000);
  const image = imageMm(f, atMetres * 1000);
  return ((f / exactFNumber(aperture)) * Math.abs(image - sensor)) / image / 0.006;
};

describe('blur in pixels of the sensor', () => {
  it.each([
    [24, 2, 26, 5],
    [24, 2.8, 5, 2],
    [24, 8, 5, Number.POSITIVE_INFINITY],
    [14, 2.8, 2.35, 1],
    [50, 2.8, 6, 40],
    [85, 1.4, 10, 11],
  ])('%d mm at f/%d focused at %d m, a point %d m off (rel 1e-9)', (f, aperture, focusMetres, atMetres) => {
    const ours = blurPixels(cameraOf(f), { aperture, focusMetres })?.(atMetres) ?? Number.NaN;
    const expected = byHand(f, aperture, focusMetres, atMetres);
    const claim = `blur of a point ${atMetres} m off, ${f} mm f/${aperture} focused at ${focusMetres} m, 6 micrometre pixels`;
    check({ id: 'blur', claim, source, unit: 'px', expected, ours, tolerance: { relative: 1e-9 } });
  });

  it('the limits of the depth of field for 0.030 mm are where it is five pixels of 0.006 mm (table values to 0.01 mm)', () => {
    // checkvalues 4f: 24 mm f/4, c 0.030 mm, focused at 2 m: sharp from 1416.77 to 3399.43 mm
    const blur = blurPixels(cameraOf(24), { aperture: 4, focusMetres: 2 });
    for (const metres of [1.41677, 3.39943]) {
      const claim = `blur at ${metres} m, the limit of 0.030 mm, 24 mm f/4 focused at 2 m`;
      const ours = blur?.(metres) ?? Number.NaN;
      check({
        id: '4f',
        claim,
        source: 'depth-of-field table',
        unit: 'px',
        expected: 5,
        ours,
        tolerance: { absolute: 1e-3 },
      });
    }
  });

  it('is nothing in focus, grows both ways from there, and has no answer nearer than the lens focuses', () => {
    const blur = blurPixels(cameraOf(24), { aperture: 2.8, focusMetres: 5 });
    expect(blur?.(5)).toBe(0);
    expect(blur?.(4) ?? 0).toBeLessThan(blur?.(3) ?? 0);
    expect(blur?.(8) ?? 0).toBeLessThan(blur?.(20) ?? 0);
    expect(blurPixels(cameraOf(300), { aperture: 2.8, focusMetres: 0.2 })).toBeNull();
  });

  it('of several frames is that of the sharpest', () => {
    const camera = cameraOf(24);
    const frames = [2, 20].map((focusMetres) => ({ aperture: 2.8, focusMetres }));
    const blur = sharpestBlur(camera, frames);
    expect(blur?.(2)).toBe(0);
    expect(blur?.(20)).toBe(0);
    expect(blur?.(3)).toBe(blurPixels(camera, frames[0] as (typeof frames)[number])?.(3));
    expect(sharpestBlur(cameraOf(300), [{ aperture: 2.8, focusMetres: 0.2 }])).toBeNull();
  });
});
