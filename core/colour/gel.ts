import { correlatedColourTemperature } from './cct.ts';
import { type Chromaticity, chromaticityFromXyz } from './chromaticity.ts';
import { apply, type Triple } from './matrix.ts';
import { shiftTemperature } from './mired.ts';
import { luminanceOfLinearSrgb, xyzFromLinearSrgb } from './srgb.ts';
import { whiteLinearSrgb } from './white-locus.ts';

/** A filter as the core sees it: mired shift and share of light let through, with an optional theatrical colour. */
export interface GelFilter {
  /** Positive warms, in mired. */
  readonly shiftMired: number;
  /** Share of luminous flux that passes, 0 to 1. */
  readonly transmission: number;
  /** Linear sRGB of a theatrical colour; null for a plain conversion gel. */
  readonly colour: Triple | null;
}

/** Light after gels. */
export interface GelledLight {
  /** Colour in linear sRGB, of luminance 1. */
  readonly tint: Triple;
  /** Colour temperature after the mired shifts, before theatrical colours. */
  readonly temperatureKelvin: number;
  /** Share of light kept. */
  readonly transmission: number;
  /** Of `tint`, with all colours. */
  readonly chromaticity: Chromaticity;
  /** Correlated colour temperature of `chromaticity`; null where the colour is too strong to have one, or no light is left. */
  readonly cctKelvin: number | null;
}

/**
 * A lamp's light through a stack of gels: mireds add, transmissions multiply (common practice), theatrical colours
 * multiply per channel. The lamp is on the white locus and a shift moves it along. The tint keeps luminance 1 so that all
 * loss is in the transmission. Shifts that lead past 1667 or 25 000 K stop there. Negative channels are held at 0, which
 * moves whites below 1901 K a little.
 */
export const lightThroughGels = (lampTemperatureKelvin: number, gels: readonly GelFilter[]): GelledLight => {
  const shift = gels.reduce((sum, gel) => sum + gel.shiftMired, 0);
  const transmission = gels.reduce((product, gel) => product * gel.transmission, 1);
  const temperatureKelvin = shiftTemperature(lampTemperatureKelvin, shift);
  let [r, g, b] = whiteLinearSrgb(temperatureKelvin).map((v) => Math.max(v, 0)) as unknown as Triple;
  for (const { colour } of gels) if (colour) [r, g, b] = [r * colour[0], g * colour[1], b * colour[2]];
  const y = luminanceOfLinearSrgb([r, g, b]);
  const tint: Triple = y > 0 ? [r / y, g / y, b / y] : [1, 1, 1];
  const chromaticity = chromaticityFromXyz(apply(xyzFromLinearSrgb, tint));
  return {
    tint,
    temperatureKelvin,
    // a colour that lets nothing through is dark, not white
    transmission: y > 0 ? transmission : 0,
    chromaticity,
    cctKelvin: y > 0 ? (correlatedColourTemperature(chromaticity)?.temperatureKelvin ?? null) : null,
  };
};
