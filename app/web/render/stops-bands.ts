/** A map of stops: one band of colour a whole stop, each with its number, ours and readable without colour. */
export interface StopsBands {
  /** Number of the first band; what lies below is drawn as the first, what lies above as the last. */
  readonly first: number;
  /** Colours as on the screen, #rrggbb, one a band. */
  readonly colours: readonly string[];
}

/** Levels from mid-grey: ever lighter, so that the order shows in grey too. */
export const levelBands: StopsBands = {
  first: -7,
  colours: [
    '#0c0e16',
    '#151b2c',
    '#1f2b44',
    '#2c3f5b',
    '#3e576f',
    '#577481',
    '#78908d',
    '#9ea28f',
    '#c3ad7c',
    '#e2b768',
    '#f7dda6',
  ],
};

/** Differences: dark where there is none, lighter the more there is; darker ones are hatched as well. */
export const differenceBands: StopsBands = {
  first: -4,
  colours: ['#a9d0e6', '#719fba', '#4d7690', '#35505f', '#212327', '#5c4a2a', '#8c6a30', '#bf9043', '#f2c674'],
};

/** Under this many stops from mid-grey there is no light to speak of, and no number is put. */
export const darkestStops = -9;

/** The whole number of stops that a value counts as. */
export const bandOf = (stops: number): number => Math.floor(stops + 0.5);

/** Three numbers 0 to 1 of a colour. */
export const channelsOf = (colour: string): readonly [number, number, number] => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255);
  return [r, g, b];
};
