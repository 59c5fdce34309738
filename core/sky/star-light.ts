import type { Triple } from '../colour/matrix.ts';
import { altitudeTable, type Sum } from './altitude-table.ts';
import { type Air, pointTransmittance } from './extinction.ts';
import { luxFromMagnitude } from './magnitudes.ts';
import { starColour } from './star-colour.ts';

/** Steps of the colour index that colours are kept for: those of the packed catalogue. */
const colourSteps = 256;
const colours = Array.from({ length: colourSteps }, (_, i) => starColour(i / 100 - 0.5));

/**
 * Light of stars at the ground.
 *
 * @returns by magnitude outside the air, colour index, and sine of the height at which the star is seen: illuminance on what
 * faces it, linear RGB in lux, after the air and thin cloud. At and below the horizon the value there.
 */
export const starLight = (air: Air): ((magnitude: number, colourIndex: number, sinAltitude: number) => Triple) => {
  const through = altitudeTable((sine) => pointTransmittance(air, sine));
  const out: Sum = [0, 0, 0];
  return (magnitude, colourIndex, sinAltitude) => {
    through(sinAltitude, out);
    const step = Math.min(Math.max(Math.round((colourIndex + 0.5) * 100), 0), colourSteps - 1);
    const [r, g, b] = colours[step] as Triple;
    const lux = luxFromMagnitude(magnitude);
    return [lux * r * out[0], lux * g * out[1], lux * b * out[2]];
  };
};
