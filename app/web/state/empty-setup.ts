import { validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useLengths } from './lengths.ts';

/** An empty place to build in: bare ground, a camera at knee height, one frame to paint in, no lamps, no subjects. */
export const emptySetup = (): Setup =>
  validateSetup({
    format: 'lampfall-setup',
    version: 3,
    id: 'new-setup',
    name: 'New setup',
    card: { lengths: useLengths.getState().lengths },
    camera: { position: [0, 0, 0.5], aim: [0, 8, 1.2], focalLengthMm: 24 },
    schemes: [
      {
        id: 'scheme',
        name: 'First try',
        frames: [{ id: 'painted', name: 'Painted', aperture: 8, seconds: 10, iso: 400, focusMetres: 8 }],
      },
    ],
  });
