import type { Triple } from '../colour/matrix.ts';
import { altitudeTable, type Sum } from '../sky/altitude-table.ts';
import { inputAfter } from '../sky/mid-exposure.ts';
import { moonThroughAir } from '../sky/moon-light.ts';
import { skyAt } from '../sky/sky-at.ts';
import type { SkyInput } from '../sky/sky-input.ts';
import type { SkyState } from '../sky/sky-state.ts';

/** Longest piece of the moon's way that is drawn straight and through the same air: a quarter of a degree. */
const pieceMilliseconds = 60_000;

/** Skies while the shutter is open, near enough to each other for the moon, from those at its opening and closing. */
export const moonStates = (states: readonly SkyState[]): readonly SkyState[] => {
  const [first, last] = [states[0] as SkyState, states.at(-1) as SkyState];
  const span = last.input.utcMilliseconds - first.input.utcMilliseconds;
  const pieces = Math.ceil(span / pieceMilliseconds);
  if (pieces <= states.length - 1) return states;
  return Array.from({ length: pieces + 1 }, (_, i) => skyAt(inputAfter(first.input, (span * i) / pieces / 1000)));
};

/** Share of moonlight that gets through air and thin cloud, by the sine of the height; none under the level horizon. */
export const throughToMoon = (input: SkyInput): ((sinAltitude: number) => Triple) => {
  const table = altitudeTable((sine) => moonThroughAir(input, sine));
  const out: Sum = [0, 0, 0];
  return (sinAltitude) => {
    if (sinAltitude < 0) return [0, 0, 0];
    table(sinAltitude, out);
    return [out[0], out[1], out[2]];
  };
};
