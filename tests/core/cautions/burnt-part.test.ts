import { describe, expect, it } from 'vitest';
import { doseForMidGrey } from '../../../core/camera/exposure.ts';
import { blackGround, boxAt, cautionsFor, find, still } from '../support/cautions.ts';
import type { OnePass } from '../support/scenes.ts';

// the camera looks level from 10 m: 24 mm on 36 x 24 mm shows 15 x 10 m there, and a pixel of 48 x 32 is 0.3125 m
const pixel = 15 / 48;

/** A dark post, lit to so many stops, and a white plate beside it that covers so many pixels. */
const plateOf = (columns: number, rows: number, stops: number, kelvin = 5600): OnePass => ({
  camera: { position: [0, -10, 1.5], aim: [0, 0, 1.5] },
  ground: blackGround,
  lamp: {
    diameterMm: 2,
    beam: { shape: 'flood', degrees: 60 },
    temperatureKelvin: kelvin,
    // 20 m from both
    output: {
      from: 'peak-candela',
      candela: doseForMidGrey({ fNumber: 8, iso: 400 }, 0.01) * 2 ** stops * 20 ** 2,
    },
  },
  pass: still([0, -20, 4], [-1, 0, 1.5]),
  frame: { whiteBalance: { kelvin: 5600 } },
  subjects: [
    boxAt('post', [-1, 0.05, 0], [0.6, 0.1, 3], 0.01),
    boxAt('plate', [(columns * pixel) / 2, 0.05, 1.5], [columns * pixel, 0.1, rows * pixel], 0.8),
  ],
});

// 0.8 of white against 0.01: 6.3 stops over the post; half a percent of 1536 pixels is 7.7
describe('burnt, of a part that no pass is aimed at', () => {
  it.each([
    [3, 2, false],
    [4, 2, true],
  ])('a plate of %d x %d pixels that burns: %s', (columns, rows, told) => {
    const caution = find(plateOf(columns, rows, -2.5), 'burnt');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ severity: 'warning', passId: 'pass', frameId: 'frame' });
      expect(caution.value).toBeCloseTo(-2.5 + Math.log2(80), 1);
      expect(caution.message).toContain('all three channels burn on “plate”');
    }
  });
  it.each([
    [2.9, false],
    [3.1, true],
  ])('the plate %d stops over mid-grey, 2.96 is full: %s', (stops, told) => {
    expect(find(plateOf(6, 4, stops - Math.log2(80)), 'burnt') !== undefined).toBe(told);
  });
  it('names the channel under a warm lamp', () => {
    expect(find(plateOf(6, 4, 2.6 - Math.log2(80), 2200), 'burnt')?.message).toContain('red burns on “plate”');
  });
  it('where the target burns itself, that alone is told', () => {
    const told = cautionsFor(plateOf(6, 4, 4)).filter(({ code }) => code === 'burnt');
    expect(told.map(({ severity }) => severity)).toEqual(['danger']);
    expect(told[0]?.message).toContain('at the target all three channels burn: ');
  });
});
