import type { GelFilter } from './gel.ts';
import { gelFromColour } from './gel-from-colour.ts';
import type { Triple } from './matrix.ts';

/** A gel as it is asked for in the trade. */
export interface GelPreset extends GelFilter {
  readonly name: string;
}

const conversion = (name: string, shiftMired: number, transmission: number): GelPreset => ({
  name,
  shiftMired,
  transmission,
  colour: null,
});

/** Colour-compensating densities of the green and minus-green gels (from memory). */
const greenDensities = [
  ['1/8', 0.035],
  ['1/4', 0.075],
  ['1/2', 0.15],
  ['Full', 0.3],
] as const;

const green = (kind: string, colourOf: (passed: number) => Triple): GelPreset[] =>
  greenDensities.map(([strength, density]) => ({
    name: `${strength} ${kind}`,
    ...gelFromColour(colourOf(10 ** -density)),
  }));

const neutral = (density: number, stops: number): GelPreset => conversion(`ND ${density}`, 0, 0.5 ** stops);

/**
 * Gels by trade name.
 *
 * Conversion gels: shifts as published for one common range; other ranges differ by up to a fifth (common practice, no
 * published standard). Transmissions are typical values from memory, that of 3/4 CTO set between its neighbours: for one
 * source, and on a white LED off by some per cent. Green and minus green: colour-compensating filters whose density acts
 * evenly on red and blue, or on green, of linear sRGB. ND: whole stops, as its densities are used in the trade.
 */
export const gelPresets: readonly GelPreset[] = [
  conversion('1/8 CTO', 26, 0.88),
  conversion('1/4 CTO', 64, 0.79),
  conversion('1/2 CTO', 109, 0.71),
  conversion('3/4 CTO', 124, 0.65),
  conversion('Full CTO', 159, 0.55),
  conversion('1/8 CTB', -18, 0.81),
  conversion('1/4 CTB', -35, 0.69),
  conversion('1/2 CTB', -78, 0.55),
  conversion('Full CTB', -137, 0.35),
  ...green('plus green', (passed) => [passed, 1, passed]),
  ...green('minus green', (passed) => [1, passed, 1]),
  neutral(0.3, 1),
  neutral(0.6, 2),
  neutral(0.9, 3),
];
