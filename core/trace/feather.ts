/** From a tenth to nine tenths of a blurred edge, in standard deviations of the bell curve. */
const tenthToNineTenths = 2.5631;

/** Softer edges than this many pixels are left as they are traced. */
export const leastSigma = 0.3;

/** A bell curve is cut off so many standard deviations from its middle. */
export const sigmasKept = 3;

/**
 * Standard deviation in pixels of the blur that makes an edge so wide.
 *
 * @param widthShare width of the soft edge, a tenth to nine tenths, as a share of the picture's width
 */
export const featherSigma = (widthShare: number, pictureWidth: number): number =>
  (widthShare * pictureWidth) / tenthToNineTenths;

/** Wider curves are taken at so many places each standard deviation, not at every pixel: a mask has no finer grain. */
export const mostTapsPerSigma = 16;

/** One way of the blur; pixels beyond the edge of the picture are as those at it. */
const blurred = (from: Float64Array, width: number, height: number, sigma: number, isAcross: boolean): Float64Array => {
  const step = Math.max(Math.ceil(sigma / mostTapsPerSigma), 1);
  const reach = Math.ceil((sigmasKept * sigma) / step);
  const bell = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-(((i - reach) * step) ** 2) / (2 * sigma * sigma)),
  );
  const total = bell.reduce((sum, v) => sum + v, 0);
  return from.map((_, at) => {
    const [x, y] = [at % width, Math.floor(at / width)];
    let sum = 0;
    for (let k = -reach; k <= reach; k++) {
      const cx = Math.min(Math.max(isAcross ? x + k * step : x, 0), width - 1);
      const cy = Math.min(Math.max(isAcross ? y : y + k * step, 0), height - 1);
      sum += (from[cy * width + cx] as number) * (bell[k + reach] as number);
    }
    return sum / total;
  });
};

/** A mask with soft edges: blurred by a bell curve. */
export const feathered = (
  mask: Float64Array,
  { width, height }: { readonly width: number; readonly height: number },
  sigma: number,
): Float64Array =>
  sigma < leastSigma ? mask : blurred(blurred(mask, width, height, sigma, true), width, height, sigma, false);
