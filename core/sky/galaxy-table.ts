import { radiansFromDegrees } from '../units/angle.ts';
import { dustAmounts, starlightAlong } from './galaxy-model.ts';

/** Sums of the model are kept at longitudes and latitudes that lie close where the band is bright: l = 7 sinh u. */
const longitudeScale = 7;
const latitudeScale = 4;
const columns = 36;
/** On either side of the plane. */
const rows = 26;
const longest = Math.asinh(180 / longitudeScale);
const highest = Math.asinh(90 / latitudeScale);
const stride = 2 * rows + 1;

/**
 * What is kept of one line of sight: ln S10 = a + b x + c x^2, with x = ln of the dust over the model's; then red and
 * blue over green.
 */
export const galaxyTableKept = 5;
const kept = galaxyTableKept;

const fill = (): Float32Array => {
  const sums = new Float32Array((columns + 1) * stride * kept);
  const [low, , high] = dustAmounts;
  const [x0, x2] = [Math.log(low), Math.log(high)];
  for (let i = 0; i <= columns; i++)
    for (let j = 0; j < stride; j++) {
      const l = radiansFromDegrees(longitudeScale * Math.sinh((longest * i) / columns));
      const b = radiansFromDegrees(latitudeScale * Math.sinh((highest * (j - rows)) / rows));
      const { s10, colour } = starlightAlong(l, b);
      const a = Math.log(s10[1]);
      const [s0, s2] = [(Math.log(s10[0]) - a) / x0, (Math.log(s10[2]) - a) / x2];
      const c = (s0 - s2) / (x0 - x2);
      sums.set([a, s0 - c * x0, c, colour[0] / colour[1], colour[2] / colour[1]], kept * (i * stride + j));
    }
  return sums;
};

/**
 * The smooth galaxy as a table, since a sum along one line of sight takes some 15 us. West and east of the middle are
 * alike. Takes about 40 ms to make.
 *
 * @returns writes what is kept at galactic degrees (longitude 0 to 360) into `out`, read in straight lines
 */
export const galaxyTable = (): ((l: number, b: number, out: Float64Array) => void) => {
  const sums = fill();
  return (l, b, out) => {
    const turn = l > 180 ? 360 - l : l;
    const x = (columns * Math.asinh(turn / longitudeScale)) / longest;
    const y = rows + (rows * Math.asinh(b / latitudeScale)) / highest;
    const [i, j] = [Math.min(Math.floor(x), columns - 1), Math.min(Math.floor(y), stride - 2)];
    const [tx, ty] = [x - i, y - j];
    const k = kept * (i * stride + j);
    const m = k + kept * stride;
    for (let n = 0; n < kept; n++) {
      const near = (sums[k + n] as number) * (1 - ty) + (sums[k + kept + n] as number) * ty;
      const far = (sums[m + n] as number) * (1 - ty) + (sums[m + kept + n] as number) * ty;
      out[n] = near * (1 - tx) + far * tx;
    }
  };
};
