import { planckLinearSrgb } from './adaptation.ts';
import type { Triple } from './matrix.ts';
import { shiftTemperature } from './mired.ts';
import { luminanceOfLinearSrgb } from './srgb.ts';

/** A filter as the core sees it: mired shift and share of light let through, with an optional theatrical colour. */
export interface GelFilter {
  /** Positive warms, in mired. */
  readonly shiftMired: number;
  /** Share of luminous flux that passes, 0 to 1. */
  readonly transmission: number;
  /** Linear sRGB of a theatrical colour; null for a plain conversion gel. */
  readonly colour: Triple | null;
}

/** Light after gels: colour of luminance 1 in linear sRGB, its temperature before theatrical colours, share of light kept. */
export interface GelledLight {
  readonly tint: Triple;
  readonly temperatureKelvin: number;
  readonly transmission: number;
}

/**
 * A lamp's light through a stack of gels: mireds add, transmissions multiply (checkvalues.md 7.2), theatrical colours
 * multiply per channel. The tint keeps luminance 1 so that all loss is in the transmission. Negative channels are held at 0.
 */
export const lightThroughGels = (lampTemperatureKelvin: number, gels: readonly GelFilter[]): GelledLight => {
  const shift = gels.reduce((sum, gel) => sum + gel.shiftMired, 0);
  const transmission = gels.reduce((product, gel) => product * gel.transmission, 1);
  const temperatureKelvin = shiftTemperature(lampTemperatureKelvin, shift);
  let [r, g, b] = planckLinearSrgb(temperatureKelvin).map((v) => Math.max(v, 0)) as unknown as Triple;
  for (const { colour } of gels) if (colour) [r, g, b] = [r * colour[0], g * colour[1], b * colour[2]];
  const y = luminanceOfLinearSrgb([r, g, b]);
  const tint: Triple = y > 0 ? [r / y, g / y, b / y] : [1, 1, 1];
  // a colour that lets nothing through is dark, not white
  return { tint, temperatureKelvin, transmission: y > 0 ? transmission : 0 };
};
