/** Light of a point as it falls into a picture: where it starts and ends while the shutter is open, in pixels. */
export interface Streak {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** A linear picture that points are added to: three numbers a pixel, rows from the top. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/** erf by Abramowitz and Stegun 7.1.26: within 1.5e-7. */
const erf = (x: number): number => {
  const t = 1 / (1 + 0.3275911 * Math.abs(x));
  const poly = t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const value = 1 - poly * Math.exp(-x * x);
  return x < 0 ? -value : value;
};

/** How many deviations from the streak it still counts. */
const reach = 3.6;

/**
 * A Gaussian drawn along a segment, at a pixel's middle; its sum over a plane of pixels is 1. Source: the convolution of
 * both in closed form.
 *
 * @param along from the segment's middle, in its direction
 * @param aside square to it
 */
const kernel = (along: number, aside: number, length: number, sigma: number): number => {
  const across = Math.exp((-aside * aside) / (2 * sigma * sigma)) / (Math.sqrt(2 * Math.PI) * sigma);
  if (length < 0.05 * sigma)
    return (across * Math.exp((-along * along) / (2 * sigma * sigma))) / (Math.sqrt(2 * Math.PI) * sigma);
  const root = Math.SQRT2 * sigma;
  return (across * (erf((along + length / 2) / root) - erf((along - length / 2) / root))) / (2 * length);
};

/**
 * Adds a streak of light: the values that it puts on all pixels, those past the edges too, sum up to `amount` exactly.
 *
 * @param amount per channel
 * @param sigma width of the point on the picture, pixels
 */
export const splat = (
  { width, height, values }: Canvas,
  { x0, y0, x1, y1 }: Streak,
  amount: readonly [number, number, number],
  sigma: number,
): void => {
  const length = Math.hypot(x1 - x0, y1 - y0);
  const [ux, uy] = length > 1e-9 ? [(x1 - x0) / length, (y1 - y0) / length] : [1, 0];
  const [mx, my] = [(x0 + x1) / 2, (y0 + y1) / 2];
  const margin = reach * sigma;
  const [left, right] = [Math.floor(Math.min(x0, x1) - margin), Math.ceil(Math.max(x0, x1) + margin)];
  const [top, bottom] = [Math.floor(Math.min(y0, y1) - margin), Math.ceil(Math.max(y0, y1) + margin)];
  if (right < 0 || bottom < 0 || left >= width || top >= height) return;
  const found: [at: number, weight: number][] = [];
  let sum = 0;
  for (let y = top; y <= bottom; y++)
    for (let x = left; x <= right; x++) {
      const [dx, dy] = [x + 0.5 - mx, y + 0.5 - my];
      const aside = dy * ux - dx * uy;
      if (Math.abs(aside) > margin) continue;
      const weight = kernel(dx * ux + dy * uy, aside, length, sigma);
      if (weight <= 1e-9) continue;
      sum += weight;
      if (x >= 0 && y >= 0 && x < width && y < height) found.push([3 * (y * width + x), weight]);
    }
  for (const [at, weight] of found)
    for (const c of [0, 1, 2] as const) values[at + c] = (values[at + c] as number) + (amount[c] * weight) / sum;
};
