/** The photosensitive area of a camera: millimetres, and whole pixels across and down in landscape position. */
export interface SensorFormat {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly pixelsWide: number;
  readonly pixelsHigh: number;
}

/** What one pixel does with light. Electrons are those of the pixel, before any gain. */
export interface SensorElectronics {
  /** Charge that saturates a pixel at base ISO, in electrons. */
  readonly fullWellElectrons: number;
  /** Lowest ISO speed that uses the whole well. */
  readonly baseIso: number;
  /** Standard deviation of reading out one pixel in the dark, in electrons, at the high ISO of night pictures. */
  readonly readNoiseElectrons: number;
}

/** A common kind of sensor under its trade name. */
export interface SensorPreset extends SensorFormat, SensorElectronics {
  readonly name: string;
}

/**
 * Sensors to choose from. Sizes are those of the trade; pixel counts are plausible ones, of no one camera. Wells and
 * read noise are typical values from memory: about 2000 electrons a square micrometre at ISO 100. One body may differ
 * from another by a factor of 1.5.
 */
export const sensorPresets: readonly SensorPreset[] = [
  {
    name: 'full frame',
    widthMm: 36,
    heightMm: 24,
    pixelsWide: 6000,
    pixelsHigh: 4000,
    fullWellElectrons: 72000,
    baseIso: 100,
    readNoiseElectrons: 2,
  },
  {
    name: 'APS-C (crop 1.5)',
    widthMm: 23.5,
    heightMm: 15.6,
    pixelsWide: 6000,
    pixelsHigh: 4000,
    fullWellElectrons: 30000,
    baseIso: 100,
    readNoiseElectrons: 2,
  },
  {
    name: 'APS-C (crop 1.6)',
    widthMm: 22.3,
    heightMm: 14.9,
    pixelsWide: 6000,
    pixelsHigh: 4000,
    fullWellElectrons: 27000,
    baseIso: 100,
    readNoiseElectrons: 2,
  },
  {
    name: 'Four Thirds',
    widthMm: 17.3,
    heightMm: 13,
    pixelsWide: 5200,
    pixelsHigh: 3900,
    fullWellElectrons: 24000,
    baseIso: 200,
    readNoiseElectrons: 1.8,
  },
  {
    name: 'medium format',
    widthMm: 43.8,
    heightMm: 32.9,
    pixelsWide: 8400,
    pixelsHigh: 6300,
    fullWellElectrons: 54000,
    baseIso: 100,
    readNoiseElectrons: 2.5,
  },
  {
    name: 'phone',
    widthMm: 9.8,
    heightMm: 7.3,
    pixelsWide: 4000,
    pixelsHigh: 3000,
    fullWellElectrons: 20000,
    baseIso: 50,
    readNoiseElectrons: 1.5,
  },
];

/** The sensor as it lies in a camera held level. */
const inLandscape = (sensor: SensorFormat): SensorFormat =>
  sensor.heightMm <= sensor.widthMm
    ? sensor
    : {
        widthMm: sensor.heightMm,
        heightMm: sensor.widthMm,
        pixelsWide: sensor.pixelsHigh,
        pixelsHigh: sensor.pixelsWide,
      };

/**
 * The preset of this size and these pixels, or undefined; sizes may differ by 0.05 mm, as spec sheets round. One on its
 * side is the same sensor.
 */
const presetOf = (held: SensorFormat): SensorPreset | undefined => {
  const sensor = inLandscape(held);
  return sensorPresets.find(
    (preset) =>
      Math.abs(preset.widthMm - sensor.widthMm) <= 0.05 + 1e-9 &&
      Math.abs(preset.heightMm - sensor.heightMm) <= 0.05 + 1e-9 &&
      preset.pixelsWide === sensor.pixelsWide &&
      preset.pixelsHigh === sensor.pixelsHigh,
  );
};

/** Trade name of a sensor; null when no preset has its size (to 0.05 mm) and its pixels. */
export const sensorName = (sensor: SensorFormat): string | null => presetOf(sensor)?.name ?? null;

/** Distance between pixel centres in micrometres, across the width; pixels are taken as square. */
export const pixelPitchMicrometres = ({ widthMm, pixelsWide }: Pick<SensorFormat, 'widthMm' | 'pixelsWide'>): number =>
  (widthMm / pixelsWide) * 1000;

/** Electrons that a square micrometre of sensor holds at ISO 100; typical, from memory. */
const electronsPerSquareMicrometre = 2000;

/**
 * Well, base ISO and read noise of a sensor: those of its preset, else a well in proportion to the pixel's area, base
 * ISO 100 and a read noise of 2 electrons. Typical values from memory.
 */
export const sensorElectronics = (sensor: SensorFormat): SensorElectronics =>
  presetOf(sensor) ?? {
    fullWellElectrons: electronsPerSquareMicrometre * pixelPitchMicrometres(sensor) ** 2,
    baseIso: 100,
    readNoiseElectrons: 2,
  };
