import { describe, expect, it } from 'vitest';
import { doseForMidGrey } from '../../../core/camera/exposure.ts';
import { blackGround, find, still } from '../support/cautions.ts';
import type { OnePass } from '../support/scenes.ts';

/** Five small plates in a row, at -4 to 4 m, face to the camera: near end, middle and far end of one subject. */
const plates = {
  id: 'row',
  name: 'Row',
  finish: { reflectance: 0.18 },
  parts: [-4, -2, 0, 2, 4].map((east) => ({
    kind: 'box',
    position: [east, 0.05, 1.3],
    widthMetres: 0.4,
    depthMetres: 0.1,
    heightMetres: 0.4,
  })),
};

/**
 * A lamp so far out from the row and so far along it. An even cone that reaches all: a plate gets I out / d^3.
 * `nearStops` is what the first plate comes out at, from mid-grey.
 */
const litFrom = (alongMetres: number, outMetres: number, nearStops: number): OnePass => {
  const metres = Math.hypot(alongMetres + 4, outMetres);
  const dose = doseForMidGrey({ fNumber: 8, iso: 400 }, 0.18) * 2 ** nearStops;
  return {
    camera: { position: [0, -20, 1.5], aim: [0, 0, 1.5], focalLengthMm: 50 },
    ground: blackGround,
    lamp: {
      diameterMm: 2,
      beam: { shape: 'flood', degrees: 179 },
      output: { from: 'peak-candela', candela: (dose * metres ** 3) / outMetres },
    },
    pass: still([alongMetres, -outMetres, 1.5], [-4, 0, 1.5]),
    frame: { whiteBalance: { kelvin: 5600 }, focusMetres: 20 },
    subjects: [plates],
  };
};

// inverse square and cosine: near over middle is 3 log2(d3 / d1); before the first plate d3 / d1 = sqrt(1 + (4 / out)^2)
describe('hot-spot', () => {
  // 1.5 stops where d3 = d1 sqrt 2: 4 m out
  it.each([
    [3.9, true],
    [4.1, false],
  ])('the lamp %d m out from the near end: %s', (out, told) => {
    const caution = find(litFrom(-4, out, 2), 'hot-spot');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ severity: 'note', passId: 'pass', limit: 1.5 });
      expect(Math.abs((caution.value ?? 0) - 3 * Math.log2(Math.hypot(4, out) / out))).toBeLessThan(0.03);
      expect(caution.message).toContain('“Row”');
    }
  });
  it.each([
    [0.9, false],
    [1.1, true],
  ])('and only where the near end comes out bright: %d stops over mid-grey: %s', (stops, told) => {
    expect(find(litFrom(-4, 3, stops), 'hot-spot') !== undefined).toBe(told);
  });
});

describe('hot-spot of a rim', () => {
  // a plate before the lamp turns its dark side to the camera: as seen it is 3.4 times as large as the row
  const dark = { kind: 'box', position: [0, -8, 2.2], widthMetres: 1.4, depthMetres: 0.1, heightMetres: 0.7 };
  it('less than three tenths of a face lit is a rim, which has no near end', () => {
    const what = litFrom(-4, 3, 2);
    expect(find(what, 'hot-spot')).toBeDefined();
    const most = { ...plates, parts: [...plates.parts, dark] };
    expect(find({ ...what, subjects: [most] }, 'hot-spot')).toBeUndefined();
    // half as wide and high it is 0.85 of the row
    const less = { ...plates, parts: [...plates.parts, { ...dark, widthMetres: 0.7, heightMetres: 0.35 }] };
    expect(find({ ...what, subjects: [less] }, 'hot-spot')).toBeDefined();
  });
});

describe('uneven', () => {
  // 2 log2(d5 / d1), corners of the plates included, is 3.5 at 2.55 m out
  it.each([
    [2.4, true],
    [2.7, false],
  ])('the lamp %d m out from the near end: %s', (out, told) => {
    const caution = find(litFrom(-4, out, 0), 'uneven');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution).toMatchObject({ severity: 'note', limit: 3.5 });
      expect(Math.abs((caution.value ?? 0) - 3 * Math.log2(Math.hypot(8, out) / out))).toBeLessThan(0.05);
    }
  });
  // the middle plate is raked at atan(out / 6) from a lamp 2 m past the near end: 15 degrees at 1.61 m
  it.each([
    [1.68, true],
    [1.54, false],
  ])('a lamp that rakes the row is left alone: %d m out, 2 m past its end: %s', (out, told) => {
    expect(find(litFrom(-6, out, 0), 'uneven') !== undefined).toBe(told);
  });
  it('a lamp that is walked along the row has no near end', () => {
    const what = litFrom(-4, 2.4, 0);
    const walk = [0, 5].map((time) => ({ time, position: [-4 + time, -2.4, 1.5], aim: [-4, 0, 1.5] }));
    expect(find({ ...what, pass: { waypoints: walk, off: 5 } }, 'uneven')).toBeUndefined();
  });
  it('is not said beside a hot spot, which has the same cause', () => {
    expect(find(litFrom(-4, 2, 2), 'hot-spot')).toBeDefined();
    expect(find(litFrom(-4, 2, 2), 'uneven')).toBeUndefined();
  });
});
