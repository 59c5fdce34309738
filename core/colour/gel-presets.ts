/** A gel as it is asked for in the trade. */
export interface GelPreset {
  readonly name: string;
  readonly shiftMired: number;
  readonly transmission: number;
}

/**
 * Conversion gels by trade name. Shifts as published for one common range (checkvalues.md 7.2e-7.2l); other ranges differ
 * by up to a fifth. Transmissions are typical values from memory: for one source, and on a white LED off by some per cent.
 */
export const gelPresets: readonly GelPreset[] = [
  { name: '1/8 CTO', shiftMired: 26, transmission: 0.88 },
  { name: '1/4 CTO', shiftMired: 64, transmission: 0.79 },
  { name: '1/2 CTO', shiftMired: 109, transmission: 0.71 },
  { name: 'Full CTO', shiftMired: 159, transmission: 0.55 },
  { name: '1/8 CTB', shiftMired: -18, transmission: 0.81 },
  { name: '1/4 CTB', shiftMired: -35, transmission: 0.69 },
  { name: '1/2 CTB', shiftMired: -78, transmission: 0.55 },
  { name: 'Full CTB', shiftMired: -137, transmission: 0.35 },
];
