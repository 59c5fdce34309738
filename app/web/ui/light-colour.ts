import { whiteBalanceMatrix } from '../../../core/colour/adaptation.ts';
import { lightThroughGels } from '../../../core/colour/gel.ts';
import { apply } from '../../../core/colour/matrix.ts';
import { encodeSrgb } from '../../../core/colour/srgb.ts';
import type { Frame, Gel } from '../../../core/setup/schema/setup.ts';

/** CSS colour of a gelled lamp as the frame's white balance shows it, at full brightness. */
export const cssColourOfLight = (
  lampKelvin: number,
  gels: readonly Gel[],
  { kelvin, tint }: Frame['whiteBalance'],
): string => {
  const light = lightThroughGels(lampKelvin, gels);
  const balanced = apply(whiteBalanceMatrix(kelvin, tint), light.tint).map((v) => Math.max(v, 0));
  const most = Math.max(...balanced, 1e-6);
  return `rgb(${balanced.map((v) => Math.round(255 * encodeSrgb(v / most))).join(' ')})`;
};
