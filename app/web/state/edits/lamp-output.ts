import type { Lamp } from '../../../../core/setup/schema/setup.ts';

export type Output = Lamp['output'];

/** What the box says, where it says a number. */
export type OutputFrom = Exclude<Output['from'], 'measured'>;

/** What the document takes, in the unit of each. */
export const outputRanges: Readonly<Record<OutputFrom, { readonly min: number; readonly max: number }>> = {
  lumens: { min: 0.001, max: 1e7 },
  'beam-distance': { min: 0.5, max: 20000 },
  'peak-candela': { min: 0.01, max: 1e9 },
  'lux-at-1-metre': { min: 0.01, max: 1e9 },
};

/** An output of one number, held within what the document takes. */
export const outputFrom = (from: OutputFrom, value: number): Output => {
  const { min, max } = outputRanges[from];
  const held = Math.min(Math.max(value, min), max);
  if (from === 'lumens') return { from, lumens: held };
  if (from === 'beam-distance') return { from, distanceMetres: held };
  return from === 'peak-candela' ? { from, candela: held } : { from, lux: held };
};

/** That number: lumens, metres, candela or lux. */
export const numberOfOutput = (output: Exclude<Output, { from: 'measured' }>): number => {
  switch (output.from) {
    case 'lumens':
      return output.lumens;
    case 'beam-distance':
      return output.distanceMetres;
    case 'peak-candela':
      return output.candela;
    case 'lux-at-1-metre':
      return output.lux;
  }
};
