import { validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { blackGround, cautionsOfSetup } from './cautions.ts';

/** The cautions of a code. */
export const told = (setup: Setup, code: string) => cautionsOfSetup(setup).filter((caution) => caution.code === code);

/** A setup of several frames under one bare lamp; all balanced for it, so that colour plays no part. */
export const framesOf = (frames: readonly object[], more: object = {}): Setup =>
  validateSetup({
    format: 'lampfall-setup',
    version: 3,
    id: 'test',
    name: 'Test',
    ground: blackGround,
    camera: { position: [0, -8, 1.5], aim: [0, 0, 1.5], focalLengthMm: 24 },
    lamps: [
      {
        kind: 'torch',
        id: 'torch',
        name: 'Torch',
        output: { from: 'peak-candela', candela: 100 },
        beam: { shape: 'open' },
        diameterMm: 1,
      },
    ],
    ...more,
    schemes: [
      {
        id: 'scheme',
        name: 'Scheme',
        frames: frames.map((frame, f) => ({
          id: `frame-${f}`,
          name: `Frame ${f}`,
          whiteBalance: { kelvin: 5600 },
          ...frame,
        })),
      },
    ],
  });

/** The same with a blend of these entries. */
export const withBlend = (setup: Setup, frames: readonly object[]): Setup =>
  validateSetup({
    ...JSON.parse(JSON.stringify(setup)),
    schemes: [{ ...JSON.parse(JSON.stringify(setup.schemes[0])), blend: { mode: 'lighten', frames } }],
  });

/** Four seconds of the lamp, standing still. */
export const passAt = (position: readonly number[], aim: readonly number[], extra: object = {}) => ({
  id: 'pass',
  name: 'Pass',
  lampId: 'torch',
  off: 4,
  waypoints: [{ position, aim }],
  ...extra,
});
