/** How far a value is from what it should be, as a share of that. */
export const relativeError = (value: number, expected: number): number => Math.abs(value / expected - 1);

/** Highest of a list of errors, for one assertion and one printed number over many cases. */
export const worst = (errors: readonly number[]): number => {
  if (errors.length === 0 || errors.some(Number.isNaN)) return Number.POSITIVE_INFINITY;
  return errors.reduce((most, error) => Math.max(most, error), 0);
};
