import { lightThroughGels } from '../colour/gel.ts';
import type { Triple } from '../colour/matrix.ts';
import type { Lamp, Pass } from '../setup/schema/setup.ts';

/** Colour of a lamp's light behind its gels. */
export interface ColourReading {
  /** Correlated colour temperature; null where the colour is too strong to have one. */
  readonly cctKelvin: number | null;
  /** Linear sRGB at luminance 1, white D65, before the camera's white balance. */
  readonly linearSrgb: Triple;
}

export const colourReading = (lamp: Lamp, pass: Pass): ColourReading => {
  const { cctKelvin, tint } = lightThroughGels(lamp.temperatureKelvin, pass.gels);
  return { cctKelvin, linearSrgb: tint };
};
