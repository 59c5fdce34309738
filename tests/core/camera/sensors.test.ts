import { describe, expect, it } from 'vitest';
import { pixelPitchMicrometres, sensorElectronics, sensorName, sensorPresets } from '../../../core/camera/sensors.ts';

const fullFrame = { widthMm: 36, heightMm: 24, pixelsWide: 6000, pixelsHigh: 4000 };
const diagonal = ({ widthMm, heightMm }: { widthMm: number; heightMm: number }) => Math.hypot(widthMm, heightMm);

describe('sensorPresets', () => {
  it.each(sensorPresets)('$name: pixels are square (1 %) and it knows its own name', (preset) => {
    const down = (preset.heightMm / preset.pixelsHigh) * 1000;
    expect(Math.abs(pixelPitchMicrometres(preset) / down - 1)).toBeLessThanOrEqual(0.01);
    expect(sensorName(preset)).toBe(preset.name);
  });

  it.each([
    ['APS-C (crop 1.5)', 1.5],
    ['APS-C (crop 1.6)', 1.6],
    ['Four Thirds', 2],
  ] as const)('%s: full-frame diagonal over its own is %d (abs 0.05, as the trade rounds)', (name, crop) => {
    const preset = sensorPresets.find((one) => one.name === name);
    if (!preset) throw new Error(`no preset ${name}`);
    expect(Math.abs(diagonal(fullFrame) / diagonal(preset) - crop)).toBeLessThanOrEqual(0.05);
  });
});

describe('sensorName', () => {
  it('forgives a spec sheet’s 0.05 mm and no more, and no other pixel count', () => {
    expect(sensorName(fullFrame)).toBe('full frame');
    expect(sensorName({ ...fullFrame, widthMm: 35.95, heightMm: 24.05 })).toBe('full frame');
    expect(sensorName({ ...fullFrame, widthMm: 35.9 })).toBeNull();
    expect(sensorName({ ...fullFrame, heightMm: 24.1 })).toBeNull();
    expect(sensorName({ ...fullFrame, pixelsWide: 6001 })).toBeNull();
    expect(sensorName({ ...fullFrame, pixelsHigh: 4001 })).toBeNull();
  });
});

describe('pixelPitchMicrometres', () => {
  it('36 mm in 6000 pixels is 6 micrometres; twice the pixels halve it (rel 1e-12)', () => {
    expect(pixelPitchMicrometres(fullFrame)).toBeCloseTo(6, 12);
    expect(pixelPitchMicrometres({ ...fullFrame, pixelsWide: 12000 })).toBeCloseTo(3, 12);
  });
});

describe('sensorElectronics', () => {
  it('gives a preset its own numbers', () => {
    for (const preset of sensorPresets)
      expect(sensorElectronics(preset)).toMatchObject({
        fullWellElectrons: preset.fullWellElectrons,
        baseIso: preset.baseIso,
        readNoiseElectrons: preset.readNoiseElectrons,
      });
  });

  it('gives an unknown sensor a well in proportion to its pixel’s area (rel 1e-12)', () => {
    const coarse = sensorElectronics({ ...fullFrame, pixelsWide: 3000, pixelsHigh: 2000 });
    const fine = sensorElectronics({ ...fullFrame, pixelsWide: 9000, pixelsHigh: 6000 });
    expect(coarse.fullWellElectrons / fine.fullWellElectrons).toBeCloseTo(9, 12);
    expect(coarse.baseIso).toBe(100);
    expect(coarse.readNoiseElectrons).toBeGreaterThan(0);
  });
});
