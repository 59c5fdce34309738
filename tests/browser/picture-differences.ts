/** Relative differences of values that are above 1 % of the maximum in either picture, sorted. */
export const differences = (gpu: ArrayLike<number>, cpu: Float64Array): number[] => {
  const floor = 0.01 * cpu.reduce((most, v) => Math.max(most, v), 0);
  const result: number[] = [];
  cpu.forEach((v, i) => {
    const other = gpu[i] as number;
    if (Math.max(v, other) > floor) result.push(Math.abs(other - v) / Math.max(v, 1e-12));
  });
  return result.sort((a, b) => a - b);
};
export const percentile = (sorted: number[], share: number) =>
  sorted[Math.min(Math.floor(sorted.length * share), sorted.length - 1)] as number;
