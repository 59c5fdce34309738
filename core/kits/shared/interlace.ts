/** A place on a carved face: [east, up], metres. */
export type Spot = readonly [east: number, up: number];

/** A panel made of square cells, some of which may be missing. Bands cross in the middle of every edge between two cells. */
export interface Panel {
  readonly columns: number;
  readonly rows: number;
  readonly has: (column: number, row: number) => boolean;
}

type Side = 'north' | 'east' | 'south' | 'west';
const sides: readonly Side[] = ['north', 'east', 'south', 'west'];
const opposite: Readonly<Record<Side, Side>> = { north: 'south', south: 'north', east: 'west', west: 'east' };
const steps: Readonly<Record<Side, readonly [number, number]>> = {
  north: [0, 1],
  south: [0, -1],
  east: [1, 0],
  west: [-1, 0],
};

/** The middle of a cell's edge, in cells from the panel's south-west corner. */
const edgeMiddle = (column: number, row: number, side: Side): Spot => [
  column + 0.5 + steps[side][0] / 2,
  row + 0.5 + steps[side][1] / 2,
];

/** Where a band is inside a cell: it came in over one edge and goes out over another. */
interface Stride {
  readonly column: number;
  readonly row: number;
  readonly from: Side;
  readonly to: Side;
}

const crosses = ({ has }: Panel, { column, row, to }: Stride): boolean =>
  has(column + steps[to][0], row + steps[to][1]);

/** The stride after this one: straight on into the next cell, or thrown back from an edge of the panel. */
const nextStride = (panel: Panel, stride: Stride): Stride => {
  const { column, row, from, to } = stride;
  if (crosses(panel, stride)) {
    const [dc, dr] = steps[to];
    // a band that ran from west to north runs on from south to east: the direction stays
    return { column: column + dc, row: row + dr, from: opposite[to], to: opposite[from] };
  }
  return { column, row, from: to, to: opposite[from] };
};

/**
 * Whether a band that leaves a cell over an edge lies on top of the other band there. Rising bands are over at edges
 * that run east to west, falling ones at those that run north to south: so each band goes over and under by turns.
 */
const isOver = ({ from, to }: Stride): boolean => {
  const [fe, fu] = steps[from];
  const [te, tu] = steps[to];
  const rises = (te - fe) * (tu - fu) > 0;
  const level = to === 'north' || to === 'south';
  return rises === level;
};

/**
 * The bands of a plain interlace, cut where they pass under another: each from one such place over a crossing to the
 * next, as places in cells. A band that passes under none is left whole and comes back to where it began.
 */
export const interlaceBands = (panel: Panel): Spot[][] => {
  const bands: Spot[][] = [];
  for (let row = 0; row < panel.rows; row++)
    for (let column = 0; column < panel.columns; column++) {
      if (!panel.has(column, row)) continue;
      for (const from of sides)
        for (const to of sides) {
          if (to === from || to === opposite[from]) continue;
          const first: Stride = { column, row, from, to };
          const before: Stride = {
            column: column + steps[from][0],
            row: row + steps[from][1],
            from: opposite[to],
            to: opposite[from],
          };
          // begins where it came in under another; each band is walked from both ends, and kept from one
          if (!panel.has(before.column, before.row) || isOver(before)) continue;
          const band = bandFrom(panel, first);
          const [start, end] = [band[0] as Spot, band.at(-1) as Spot];
          if (start[0] < end[0] || (start[0] === end[0] && start[1] < end[1])) bands.push(band);
        }
    }
  return bands;
};

/** Follows a band from where it comes up to where it next goes under. */
const bandFrom = (panel: Panel, first: Stride): Spot[] => {
  const band: Spot[] = [edgeMiddle(first.column, first.row, first.from)];
  let stride = first;
  for (let k = 0; k < 1000; k++) {
    band.push(edgeMiddle(stride.column, stride.row, stride.to));
    if (crosses(panel, stride) && !isOver(stride)) return band;
    stride = nextStride(panel, stride);
  }
  throw new Error('a band of the interlace passes under no other');
};
