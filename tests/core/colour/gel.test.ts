import { describe, expect, it } from 'vitest';
import { whiteBalanceMatrix } from '../../../core/colour/adaptation.ts';
import { correlatedColourTemperature } from '../../../core/colour/cct.ts';
import { type GelFilter, lightThroughGels } from '../../../core/colour/gel.ts';
import { gelFromColour } from '../../../core/colour/gel-from-colour.ts';
import { apply } from '../../../core/colour/matrix.ts';
import { temperatureLimitsKelvin } from '../../../core/colour/mired.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { whiteChromaticity, whiteLinearSrgb } from '../../../core/colour/white-locus.ts';
import { relativeError } from '../support/errors.ts';

const gel = (shiftMired: number, transmission: number, colour: GelFilter['colour'] = null): GelFilter => ({
  shiftMired,
  transmission,
  colour,
});

// stacked gels: add mireds, multiply transmissions (checkvalues.md 7.2)
describe('lightThroughGels', () => {
  it('leaves a lamp without gels alone (rel 1e-12)', () => {
    const { tint, temperatureKelvin, transmission } = lightThroughGels(5600, []);
    expect(relativeError(temperatureKelvin, 5600)).toBeLessThanOrEqual(1e-12);
    expect(transmission).toBe(1);
    tint.forEach((v, c) => {
      expect(relativeError(v, whiteLinearSrgb(5600)[c] as number)).toBeLessThanOrEqual(1e-9);
    });
  });

  it('adds mireds and multiplies transmissions: half and quarter orange over 5600 K (rel 1e-12)', () => {
    const both = lightThroughGels(5600, [gel(109, 0.71), gel(64, 0.79)]);
    expect(relativeError(both.temperatureKelvin, 1e6 / (1e6 / 5600 + 173))).toBeLessThanOrEqual(1e-12);
    expect(relativeError(both.transmission, 0.71 * 0.79)).toBeLessThanOrEqual(1e-12);
  });

  it('does not care for the order, and a gel against its opposite leaves only the loss', () => {
    const [warm, cold] = [gel(120, 0.6, [1, 0.8, 0.5]), gel(-120, 0.4)];
    const [a, b] = [lightThroughGels(5000, [warm, cold]), lightThroughGels(5000, [cold, warm])];
    expect(relativeError(a.temperatureKelvin, 5000)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(a.transmission, 0.24)).toBeLessThanOrEqual(1e-12);
    a.tint.forEach((v, c) => {
      expect(relativeError(v, b.tint[c] as number)).toBeLessThanOrEqual(1e-12);
    });
  });

  it('keeps the tint at luminance 1, so that all loss is in the transmission (rel 1e-12)', () => {
    for (const gels of [[], [gel(159, 0.55)], [gel(-137, 0.35)], [gel(0, 0.2, [0.1, 0.9, 0.3])], [gel(500, 0.1)]])
      for (const kelvin of [2200, 5600, 12_000]) {
        const { tint } = lightThroughGels(kelvin, gels);
        expect(relativeError(luminanceOfLinearSrgb(tint), 1)).toBeLessThanOrEqual(1e-12);
        expect(Math.min(...tint)).toBeGreaterThanOrEqual(0);
      }
  });

  it('a positive shift warms: more red to blue; a negative one cools', () => {
    const ratio = (shift: number) => {
      const { tint } = lightThroughGels(5000, [gel(shift, 1)]);
      return tint[0] / tint[2];
    };
    expect(ratio(100)).toBeGreaterThan(ratio(0));
    expect(ratio(-80)).toBeLessThan(ratio(0));
  });

  it('stops at the limits of the locus (1667 and 25 000 K) instead of running away', () => {
    expect(lightThroughGels(8000, [gel(-500, 1)]).temperatureKelvin).toBeCloseTo(temperatureLimitsKelvin.max, 6);
    expect(lightThroughGels(2500, [gel(500, 1)]).temperatureKelvin).toBeCloseTo(temperatureLimitsKelvin.min, 6);
  });

  it('a theatrical colour multiplies each channel (rel 1e-12)', () => {
    const [plain, green] = [lightThroughGels(5600, []), lightThroughGels(5600, [gel(0, 1, [0.5, 1, 0.25])])];
    expect(relativeError(green.tint[0] / green.tint[1], (0.5 * plain.tint[0]) / plain.tint[1])).toBeLessThanOrEqual(
      1e-12,
    );
    expect(relativeError(green.tint[2] / green.tint[1], (0.25 * plain.tint[2]) / plain.tint[1])).toBeLessThanOrEqual(
      1e-12,
    );
  });

  it('a lamp and a balance of the same temperature give grey, with gels that only shift too (abs 1e-12)', () => {
    for (const [lamp, shift] of [
      [5600, 0],
      [4500, 0],
      [6500, 159],
      [3200, -137],
    ] as const) {
      const { tint, temperatureKelvin } = lightThroughGels(lamp, [gel(shift, 0.5)]);
      const balanced = apply(whiteBalanceMatrix(temperatureKelvin, 0), tint);
      expect(Math.max(...balanced) - Math.min(...balanced)).toBeLessThanOrEqual(1e-12);
    }
  });

  it('tells chromaticity and colour temperature of what leaves: those of the white locus without colours (abs 1e-9)', () => {
    for (const kelvin of [2200, 3200, 4600, 5600, 9000]) {
      const { chromaticity, cctKelvin } = lightThroughGels(kelvin, []);
      const white = whiteChromaticity(kelvin);
      expect(Math.abs(chromaticity[0] - white[0])).toBeLessThanOrEqual(1e-9);
      expect(Math.abs(chromaticity[1] - white[1])).toBeLessThanOrEqual(1e-9);
      const kelvinOfWhite = correlatedColourTemperature(white)?.temperatureKelvin;
      expect(relativeError(cctKelvin as number, kelvinOfWhite as number)).toBeLessThanOrEqual(1e-9);
    }
  });

  it('an amber colour lowers the colour temperature, a blue one raises it, a strong green leaves none', () => {
    const through = (colour: GelFilter['colour']) => lightThroughGels(5600, [gel(0, 1, colour)]).cctKelvin;
    expect(through([1, 0.8, 0.6])).toBeLessThan(5000);
    expect(through([0.8, 0.9, 1])).toBeGreaterThan(6200);
    expect(through([0.1, 1, 0.1])).toBeNull();
  });

  it('a colour that lets nothing through is dark and has no colour temperature', () => {
    const dark = lightThroughGels(5600, [gel(0, 1, [0, 0, 0])]);
    expect(dark.transmission).toBe(0);
    expect(dark.cctKelvin).toBeNull();
  });
});

describe('gelFromColour', () => {
  it('lets its luminance through and shifts nothing (rel 1e-9)', () => {
    const { shiftMired, transmission, colour } = gelFromColour([0.2, 0.7, 0.4]);
    // luminance weights of IEC 61966-2-1 from its primaries
    expect(relativeError(transmission, 0.2126390059 * 0.2 + 0.7151686788 * 0.7 + 0.0721923154 * 0.4)).toBeLessThan(
      1e-9,
    );
    expect(shiftMired).toBe(0);
    expect(colour).toEqual([0.2, 0.7, 0.4]);
    expect(relativeError(gelFromColour([1, 1, 1]).transmission, 1)).toBeLessThanOrEqual(1e-12);
    expect(gelFromColour([0, 0, 0]).transmission).toBe(0);
  });
});
