/** Stops from a ratio of light: log2. A ratio of 0 gives -Infinity, which readings turn into `null`. */
export const stopsFromRatio = (ratio: number): number => Math.log2(ratio);

/** Ratio of light from stops: 2^stops. */
export const ratioFromStops = (stops: number): number => 2 ** stops;
