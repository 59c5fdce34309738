import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import type { Sum } from './altitude-table.ts';

/** Colours along a scale, linear sRGB, at rising places. */
export type ColourScale = readonly (readonly [at: number, colour: Triple])[];

const toLuminanceOne = (raw: Triple): Triple => {
  const y = luminanceOfLinearSrgb(raw);
  return [raw[0] / y, raw[1] / y, raw[2] / y];
};

/** Writes the colour at a place of a scale into `out`, in straight lines; its ends beyond them. */
export const readColours = (scale: ColourScale, at: number, out: Sum): void => {
  let k = 0;
  while (k < scale.length - 2 && at > (scale[k + 1] as ColourScale[number])[0]) k++;
  const [from, a] = scale[k] as ColourScale[number];
  const [to, b] = scale[k + 1] as ColourScale[number];
  const t = Math.min(Math.max((at - from) / (to - from), 0), 1);
  for (let c = 0; c < 3; c++) out[c] = (a[c] as number) * (1 - t) + (b[c] as number) * t;
};

/**
 * Straight up, by height of the sun in degrees. Blue over green about 2 at -6 degrees: ozone takes yellow and red out of
 * the long slanting way (colours of Patat et al. 2006 and our own march, sky.md 4.6; between these by eye).
 */
const zenithBySun: ColourScale = [
  [-18, [0.9, 1, 1.15]],
  [-14, [0.82, 1, 1.45]],
  [-10, [0.7, 1, 1.85]],
  [-6, [0.64, 1, 2]],
  [-3, [0.68, 1, 1.9]],
  [0, [0.78, 1, 1.6]],
];

/** Colour of the dome at a height of the sun: linear sRGB of luminance 1. */
export const zenithColours = (sunDegrees: number): Triple => {
  const out: Sum = [0, 0, 0];
  readColours(zenithBySun, sunDegrees, out);
  return toLuminanceOne(out);
};

/** Up the arch over the sun, in heights of the arch: red low down, then orange, yellow, a greenish white. By eye. */
const deepArch: ColourScale = [
  [0, [2.3, 0.8, 0.16]],
  [0.5, [1.8, 0.92, 0.3]],
  [1.1, [1.35, 1, 0.62]],
  [2, [1, 1.04, 1.05]],
];
/** The same with the sun at the horizon. */
const sunsetArch: ColourScale = [
  [0, [1.5, 0.95, 0.45]],
  [0.5, [1.35, 0.98, 0.6]],
  [1.1, [1.12, 1, 0.88]],
  [2, [0.95, 1.02, 1.15]],
];
/** The band over the earth's shadow, luminance 1. By eye. */
export const pinkColour: Triple = toLuminanceOne([1.25, 0.92, 1.15]);
/** Where the arch has the dome's colour. */
const blueFrom = 3.6;

/** Colours up the arch at a height of the sun, each of luminance 1, into the colour of the dome. */
export const archColours = (sunDegrees: number, dome: Triple): ColourScale => {
  const t = Math.min(Math.max((sunDegrees + 5) / 5, 0), 1);
  const rows = deepArch.map(([at, deep], k): ColourScale[number] => {
    const sunset = (sunsetArch[k] as ColourScale[number])[1];
    return [
      at,
      toLuminanceOne(
        [0, 1, 2].map((c) => (deep[c] as number) * (1 - t) + (sunset[c] as number) * t) as unknown as Triple,
      ),
    ];
  });
  return [...rows, [blueFrom, dome]];
};
