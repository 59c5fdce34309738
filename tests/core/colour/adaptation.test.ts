import { describe, expect, it } from 'vitest';
import { adaptationMatrix, planckLinearSrgb, whiteBalanceMatrix } from '../../../core/colour/adaptation.ts';
import { correlatedColourTemperature } from '../../../core/colour/cct.ts';
import { chromaticityFromXyz, xyzFromChromaticity } from '../../../core/colour/chromaticity.ts';
import { apply, invert, type Matrix3, multiply, type Triple } from '../../../core/colour/matrix.ts';
import { planckChromaticity } from '../../../core/colour/planck-locus.ts';
import {
  decodeSrgb,
  encodeSrgb,
  linearSrgbFromXyz,
  luminanceOfLinearSrgb,
  srgbWhite,
  xyzFromLinearSrgb,
} from '../../../core/colour/srgb.ts';
import { whiteLinearSrgb } from '../../../core/colour/white-locus.ts';

const identity: Matrix3 = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];
const apart = (a: readonly Triple[], b: readonly Triple[]) =>
  Math.max(...a.flatMap((row, r) => row.map((v, c) => Math.abs(v - ((b[r] as Triple)[c] as number)))));

describe('whiteBalanceMatrix', () => {
  it.each([1667, 2000, 2700, 3200, 4200, 4700, 5600, 6500, 9000, 12_000, 25_000])(
    'a lamp of %d K comes out neutral (R = G = B, abs 1e-12) at the same luminance (rel 1e-12)',
    (kelvin) => {
      const light = whiteLinearSrgb(kelvin);
      const balanced = apply(whiteBalanceMatrix(kelvin, 0), light);
      expect(Math.max(...balanced) - Math.min(...balanced)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs(luminanceOfLinearSrgb(balanced) / luminanceOfLinearSrgb(light) - 1)).toBeLessThanOrEqual(1e-12);
    },
  );

  it('set warmer than the light it comes out blue, set colder it comes out orange', () => {
    const light = whiteLinearSrgb(4200);
    const [r1, , b1] = apply(whiteBalanceMatrix(3200, 0), light);
    const [r2, , b2] = apply(whiteBalanceMatrix(5600, 0), light);
    expect(b1).toBeGreaterThan(r1 * 1.1);
    expect(r2).toBeGreaterThan(b2 * 1.1);
  });

  it.each([2400, 4200, 6500])('at %d K tint goes from green (negative) to magenta (positive)', (kelvin) => {
    const light = whiteLinearSrgb(kelvin);
    const greenOver = (tint: number) => {
      const [r, g, b] = apply(whiteBalanceMatrix(kelvin, tint), light);
      return g / ((r + b) / 2);
    };
    expect(greenOver(2)).toBeLessThan(0.98);
    expect(greenOver(-2)).toBeGreaterThan(1.02);
    expect(greenOver(0)).toBeCloseTo(1, 12);
  });

  // light that the balance makes neutral, found backward: what it does to the temperature, and how far it is off the locus
  const neutralised = (kelvin: number, tint: number) => {
    const light = apply(invert(whiteBalanceMatrix(kelvin, tint)), [1, 1, 1]);
    const found = correlatedColourTemperature(chromaticityFromXyz(apply(xyzFromLinearSrgb, light)));
    if (!found) throw new Error('off the locus');
    return found;
  };

  it.each([2000, 3200, 4200, 5600, 9000, 12_000])(
    'at %d K a tint moves the white by a Duv of 0.005 (abs 1e-5) and leaves its temperature (rel 5e-4)',
    (kelvin) => {
      const plain = neutralised(kelvin, 0);
      for (const tint of [-5, -1, 1, 2.5, 5]) {
        const tinted = neutralised(kelvin, tint);
        expect(Math.abs(tinted.duv - plain.duv - 0.005 * tint)).toBeLessThanOrEqual(1e-5);
        expect(Math.abs(tinted.temperatureKelvin / plain.temperatureKelvin - 1)).toBeLessThanOrEqual(5e-4);
      }
    },
  );
});

describe('adaptationMatrix', () => {
  it('takes the one white to the other and back (abs 1e-12)', () => {
    const [warm, cold] = [planckChromaticity(3000), planckChromaticity(8000)];
    const there = adaptationMatrix(warm, cold);
    expect(apart([apply(there, xyzFromChromaticity(warm))], [xyzFromChromaticity(cold)])).toBeLessThanOrEqual(1e-12);
    expect(apart(multiply(adaptationMatrix(cold, warm), there), identity)).toBeLessThanOrEqual(1e-12);
    expect(apart(adaptationMatrix(warm, warm), identity)).toBeLessThanOrEqual(1e-12);
  });
});

describe('planckLinearSrgb', () => {
  it('has luminance 1 at every temperature, and blue below zero only under 1901 K (rel 1e-12)', () => {
    for (let kelvin = 1667; kelvin <= 25_000; kelvin += 61) {
      const rgb = planckLinearSrgb(kelvin);
      expect(Math.abs(luminanceOfLinearSrgb(rgb) - 1)).toBeLessThanOrEqual(1e-12);
      if (kelvin >= 1901) expect(rgb[2]).toBeGreaterThan(0);
    }
    expect(planckLinearSrgb(1900)[2]).toBeLessThan(0);
  });
});

describe('sRGB round trips', () => {
  it('every 8-bit code survives decode and encode (abs 1e-7; the standard’s two pieces miss each other by 3e-8)', () => {
    for (let code = 0; code < 256; code++) {
      const encoded = encodeSrgb(decodeSrgb(code / 255));
      expect(Math.abs(encoded - code / 255)).toBeLessThanOrEqual(1e-7);
      expect(Math.round(encoded * 255)).toBe(code);
    }
  });
  it('linear values survive encode and decode (abs 1e-8), and those outside [0, 1] are held', () => {
    for (let v = 0; v <= 1; v += 1 / 4096) expect(Math.abs(decodeSrgb(encodeSrgb(v)) - v)).toBeLessThanOrEqual(1e-8);
    expect(encodeSrgb(-1)).toBe(0);
    expect(encodeSrgb(7)).toBeCloseTo(1, 12);
  });
  it('the matrices undo each other, and white is white (abs 1e-12)', () => {
    expect(apart(multiply(linearSrgbFromXyz, xyzFromLinearSrgb), identity)).toBeLessThanOrEqual(1e-12);
    expect(apart([apply(xyzFromLinearSrgb, [1, 1, 1])], [xyzFromChromaticity(srgbWhite)])).toBeLessThanOrEqual(1e-12);
  });
});

describe('matrix', () => {
  const a: Matrix3 = [
    [2, -1, 0.5],
    [0, 3, 1],
    [4, 1, -2],
  ];
  it('multiply applies the right one first, and invert undoes (abs 1e-12)', () => {
    const v: Triple = [0.3, -2, 7];
    expect(apart([apply(multiply(a, bRows), v)], [apply(a, apply(bRows, v))])).toBeLessThanOrEqual(1e-12);
    expect(apart(multiply(invert(a), a), identity)).toBeLessThanOrEqual(1e-12);
    expect(apart(multiply(a, invert(a)), identity)).toBeLessThanOrEqual(1e-12);
  });
  const bRows: Matrix3 = [
    [0, 1, 0],
    [5, 0, 2],
    [-1, 1, 1],
  ];
});
