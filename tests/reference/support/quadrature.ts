/** Where to look on [0, 1] and with what weight; weights sum to 1. */
export interface Node {
  readonly at: number;
  readonly weight: number;
}

/** Value and slope of the Legendre polynomial of a degree at x, by its recurrence. */
const legendre = (degree: number, x: number): { value: number; slope: number } => {
  let [before, value] = [1, x];
  for (let n = 2; n <= degree; n++) [before, value] = [value, ((2 * n - 1) * x * value - (n - 1) * before) / n];
  return { value, slope: (degree * (x * value - before)) / (x * x - 1) };
};

/** Gauss and Legendre's rule of `count` nodes on [0, 1] (Abramowitz and Stegun 25.4.29), roots by Newton's method. */
export const gaussLegendre = (count: number): Node[] =>
  Array.from({ length: count }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    for (let n = 0; n < 8; n++) {
      const { value, slope } = legendre(count, x);
      x -= value / slope;
    }
    const { slope } = legendre(count, x);
    return { at: (1 - x) / 2, weight: 1 / ((1 - x * x) * slope ** 2) };
  });

/** Mean of a function over the unit square by the rule of `count` nodes a side. */
export const meanOverSquare = (count: number, value: (u: number, v: number) => number): number => {
  const nodes = gaussLegendre(count);
  return nodes.reduce(
    (sum, u) => sum + nodes.reduce((part, v) => part + u.weight * v.weight * value(u.at, v.at), 0),
    0,
  );
};
