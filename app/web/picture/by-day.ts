import { doseForMidGrey } from '../../../core/camera/exposure.ts';
import type { Matrix3 } from '../../../core/colour/matrix.ts';
import type { WorldFrame } from '../../../core/world/world.ts';

/** How dark the day is drawn: level ground of 18 % this many stops under mid-grey, so that no bright sky glares. */
const dayStops = -1.5;
const asItIs: Matrix3 = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** A frame under an even, neutral sky alone. Under a plain sky it uses that sky's own layer, and nothing is traced for it that night does not need. */
export const byDay = (frame: WorldFrame): WorldFrame => {
  const seconds = frame.lights.find(({ source }) => source.kind !== 'lamp')?.seconds ?? 1;
  const lux = (doseForMidGrey(frame.exposure, 0.18) * 2 ** dayStops) / seconds;
  return {
    ...frame,
    lights: [
      {
        id: 'sky',
        source: { kind: 'sky' },
        strength: [lux, lux, lux],
        seconds,
        lit: [0, seconds],
        holderLuminance: null,
      },
    ],
    development: { ...frame.development, whiteBalance: asItIs, vignetting: false, noise: null },
  };
};
