import type { Gel } from '../setup/schema/setup.ts';

/** Sheets of neutral density, stops: ND 0.9, 0.6, 0.3 and 0.15. Densities of the trade, from memory. */
const sheets = [3, 2, 1, 0.5] as const;

/** A filter that only takes light: neutral density. */
export const isNeutral = ({ shiftMired, transmission, colour }: Gel): boolean =>
  shiftMired === 0 && colour === null && transmission < 1;

/** Sheets that make so many stops, in halves. */
export const densityOf = (stops: number): Gel[] => {
  const gels: Gel[] = [];
  let left = stops;
  for (const sheet of sheets)
    for (; left >= sheet - 1e-9; left -= sheet)
      gels.push({
        name: `ND ${Number((0.3 * sheet).toFixed(2))}`,
        shiftMired: 0,
        transmission: 0.5 ** sheet,
        colour: null,
      });
  return gels;
};

/** Most density that one carries, stops: three sheets of three. Common practice, no published source. */
const mostStops = 9;
/** Sheets that it may take. */
const mostSheets = 4;
const mostGels = 8;

/** Most density that can hang in front of a lamp beside its other gels, stops. */
export const mostDensity = (gels: readonly Gel[]): number => (gels.length + mostSheets <= mostGels ? mostStops : 0);
