import { z } from 'zod';
import { choice, degrees, flag, position, quantity, whole } from './fields.ts';

const millimetres = (description: string) => quantity('mm', 1, 120, description);

export const camera = z
  .strictObject({
    position: position.describe('the lens: [east, north, up] in metres'),
    aim: position.describe('what the middle of the picture looks at: [east, north, up] in metres'),
    rollDegrees: degrees(-180, 180, 'roll, clockwise as the photographer sees it').default(0),
    sensor: z
      .strictObject({
        widthMm: millimetres('width of the sensor as it is held; less than its height = portrait').default(36),
        heightMm: millimetres('sensor height').default(24),
        pixelsWide: whole(100, 30000, 'pixels across').default(6000),
        pixelsHigh: whole(100, 30000, 'pixels down').default(4000),
        fullWellElectrons: quantity('electrons', 500, 1e6, 'what a pixel holds at base ISO').default(72000),
        baseIso: quantity('', 25, 3200, 'ISO speed at which a pixel is filled').default(100),
        readNoiseElectrons: quantity('electrons', 0, 100, 'noise of reading a pixel').default(2),
      })
      .prefault({})
      .describe('the sensor'),
    focalLengthMm: quantity('mm', 3, 2000, 'focal length').default(24),
    sharpness: choice(
      ['sensor', 'pixel'],
      'what counts as sharp: a blur of the sensor’s diagonal / 1442, or of two pixels',
    ).default('sensor'),
    drawn: z
      .strictObject({
        focusBlur: flag('whether what is out of focus is drawn soft').default(false),
        vignetting: flag('whether the corners darken with the fourth power of the cosine').default(false),
        noise: flag('whether shot noise and read noise are drawn').default(false),
        holder: flag('whether whoever holds a lamp is drawn, and the shadow they throw').default(true),
        response: choice(['soft', 'plain'], 'highlights roll off softly, or go straight to white').default('soft'),
      })
      .prefault({})
      .describe('what of lens and sensor the picture shows'),
  })
  .refine((c) => c.position.some((v, i) => Math.abs(v - (c.aim[i] as number)) > 1e-6), {
    path: ['aim'],
    message: 'must differ from position',
  })
  .describe('camera, sensor and lens');
