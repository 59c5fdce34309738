import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { colourReading } from '../../../core/readings/colour-reading.ts';
import { relativeError } from '../support/errors.ts';
import { onlyPassOf, readPass } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

const setupWith = (temperatureKelvin: number, gels: readonly object[] = []) =>
  onePassSetup({
    camera: { position: [0, 0, 1.5], aim: [0, 8, 0] },
    lamp: { temperatureKelvin },
    pass: { gels, waypoints: [{ position: [3, 4, 1], aim: [0, 8, 1] }] },
  });
const read = (temperatureKelvin: number, gels: readonly object[] = []) => {
  const { lamp, pass } = onlyPassOf(setupWith(temperatureKelvin, gels));
  return colourReading(lamp, pass);
};
const shift = (shiftMired: number) => ({ name: 'Gel', shiftMired, transmission: 0.6 });

describe('colourReading', () => {
  // within 0.4 %: what the white locus promises of its correlated temperature
  it.each([2000, 2700, 3200, 4500, 5600, 9000])('a bare lamp of %d K reads as such (rel 0.4 %)', (kelvin) => {
    expect(relativeError(read(kelvin).cctKelvin as number, kelvin)).toBeLessThanOrEqual(0.004);
  });

  it('gels add their mireds: 1e6 / T (common practice; rel 0.4 %)', () => {
    const { cctKelvin } = read(5600, [shift(100), shift(34)]);
    expect(relativeError(cctKelvin as number, 1e6 / (1e6 / 5600 + 134))).toBeLessThanOrEqual(0.004);
  });

  it('the colour has luminance 1 whatever the gels (rel 1e-12), and warms from blue to red', () => {
    const colours = [read(9000), read(5600), read(5600, [shift(80)]), read(2200)];
    for (const { linearSrgb } of colours)
      expect(relativeError(luminanceOfLinearSrgb(linearSrgb), 1)).toBeLessThan(1e-12);
    const warmth = colours.map(({ linearSrgb: [red, , blue] }) => red - blue);
    expect([...warmth].sort((a, b) => a - b)).toEqual(warmth);
  });

  it.each([
    ['green', [0.02, 1, 0.02], 1],
    ['blue', [0.02, 0.05, 1], 2],
  ] as const)('strong %s has no temperature: null, and its channel leads', (_, colour, channel) => {
    const { cctKelvin, linearSrgb } = read(5600, [{ name: 'Colour', colour }]);
    expect(cctKelvin).toBeNull();
    expect(Math.max(...linearSrgb)).toBe(linearSrgb[channel]);
  });

  it('is what the reading of the pass has', () => {
    expect(readPass(setupWith(3000, [shift(20)])).colour).toEqual(read(3000, [shift(20)]));
  });
});
