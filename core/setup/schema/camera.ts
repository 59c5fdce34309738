import { z } from 'zod';
import { degrees, position, quantity, whole } from './fields.ts';

const millimetres = (description: string) => quantity('mm', 1, 120, description);

export const camera = z
  .strictObject({
    position: position.describe('the lens: [east, north, up] in metres'),
    aim: position.describe('what the middle of the picture looks at: [east, north, up] in metres'),
    rollDegrees: degrees(-180, 180, 'roll, clockwise as the photographer sees it; 90 = portrait').default(0),
    sensor: z
      .strictObject({
        widthMm: millimetres('sensor width').default(36),
        heightMm: millimetres('sensor height').default(24),
        pixelsWide: whole(100, 30000, 'pixels across').default(6000),
        pixelsHigh: whole(100, 30000, 'pixels down').default(4000),
      })
      .default({ widthMm: 36, heightMm: 24, pixelsWide: 6000, pixelsHigh: 4000 })
      .describe('the sensor'),
    focalLengthMm: quantity('mm', 3, 2000, 'focal length').default(24),
  })
  .refine((c) => c.position.some((v, i) => Math.abs(v - (c.aim[i] as number)) > 1e-6), {
    path: ['aim'],
    message: 'must differ from position',
  })
  .describe('camera, sensor and lens');
