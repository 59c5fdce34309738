import { radiansFromDegrees } from '../units/angle.ts';
import { dustAmounts, starlightAlong } from './galaxy-model.ts';

/** Sums of the model are made at longitudes and latitudes that lie close where the band is bright: l = 7 sinh u. */
const longitudeScale = 7;
const latitudeScale = 4;
const columns = 28;
/** On either side of the plane. */
const rows = 20;
const longest = Math.asinh(180 / longitudeScale);
const highest = Math.asinh(90 / latitudeScale);

/**
 * What is kept of one line of sight: ln S10 = a + b x + c x^2, with x = ln of the dust over the model's; then red and
 * blue over green.
 */
export const galaxyTableKept = 5;
const kept = galaxyTableKept;

/** A grid of `kept` numbers a place, latitudes running fastest. */
interface Grid {
  readonly columns: number;
  readonly rows: number;
  readonly values: Float32Array;
}

const sumsOfModel = (): Grid => {
  const grid: Grid = {
    columns: columns + 1,
    rows: 2 * rows + 1,
    values: new Float32Array((columns + 1) * (2 * rows + 1) * kept),
  };
  const [low, , high] = dustAmounts;
  const [x0, x2] = [Math.log(low), Math.log(high)];
  for (let i = 0; i < grid.columns; i++)
    for (let j = 0; j < grid.rows; j++) {
      const l = radiansFromDegrees(longitudeScale * Math.sinh((longest * i) / columns));
      const b = radiansFromDegrees(latitudeScale * Math.sinh((highest * (j - rows)) / rows));
      const { s10, colour } = starlightAlong(l, b);
      const a = Math.log(s10[1]);
      const [s0, s2] = [(Math.log(s10[0]) - a) / x0, (Math.log(s10[2]) - a) / x2];
      const c = (s0 - s2) / (x0 - x2);
      grid.values.set([a, s0 - c * x0, c, colour[0] / colour[1], colour[2] / colour[1]], kept * (i * grid.rows + j));
    }
  return grid;
};

/** Places between two of the model. */
const finer = 4;

/** The same the other way round past an end: l = -1 is as l = 1. */
const mirrored = (index: number, count: number): number => {
  const at = Math.abs(index);
  return at < count ? at : 2 * (count - 1) - at;
};

/** A grid with more places along columns or rows, on curves through four neighbours, so that no edges show in the sky. */
const refined = (grid: Grid, along: 'columns' | 'rows'): Grid => {
  const size = { columns: grid.columns, rows: grid.rows };
  const count = size[along];
  size[along] = finer * (count - 1) + 1;
  const values = new Float32Array(size.columns * size.rows * kept);
  const across = along === 'columns' ? grid.rows : grid.columns;
  for (let fine = 0; fine < size[along]; fine++) {
    const from = Math.min(Math.floor(fine / finer), count - 2);
    const t = fine / finer - from;
    const [t2, t3] = [t * t, t * t * t];
    const weights = [(2 * t2 - t3 - t) / 2, (3 * t3 - 5 * t2 + 2) / 2, (4 * t2 - 3 * t3 + t) / 2, (t3 - t2) / 2];
    for (let other = 0; other < across; other++) {
      const placeIn = (of: { readonly rows: number }, at: number): number =>
        kept * (along === 'columns' ? at * of.rows + other : other * of.rows + at);
      const to = placeIn(size, fine);
      for (let tap = 0; tap < 4; tap++) {
        const at = placeIn(grid, mirrored(from - 1 + tap, count));
        for (let n = 0; n < kept; n++)
          values[to + n] = (values[to + n] as number) + (weights[tap] as number) * (grid.values[at + n] as number);
      }
    }
  }
  return { ...size, values };
};

/**
 * The smooth galaxy as a table, since a sum along one line of sight takes some 15 us. West and east of the middle are
 * alike. Takes about 40 ms to make.
 *
 * @returns writes what is kept at galactic degrees (longitude 0 to 360) into `out`
 */
export const galaxyTable = (): ((l: number, b: number, out: Float64Array) => void) => {
  const { columns: width, rows: height, values } = refined(refined(sumsOfModel(), 'rows'), 'columns');
  return (l, b, out) => {
    const turn = l > 180 ? 360 - l : l;
    const x = ((width - 1) * Math.asinh(turn / longitudeScale)) / longest;
    const y = ((height - 1) * (1 + Math.asinh(b / latitudeScale) / highest)) / 2;
    const i = Math.min(Math.max(Math.floor(x), 0), width - 2);
    const j = Math.min(Math.max(Math.floor(y), 0), height - 2);
    const tx = x - i;
    const ty = y - j;
    const k = kept * (i * height + j);
    const m = k + kept * height;
    for (let n = 0; n < kept; n++) {
      const near = (values[k + n] as number) * (1 - ty) + (values[k + kept + n] as number) * ty;
      const far = (values[m + n] as number) * (1 - ty) + (values[m + kept + n] as number) * ty;
      out[n] = near * (1 - tx) + far * tx;
    }
  };
};
