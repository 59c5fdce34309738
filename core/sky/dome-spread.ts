import { directionInCell, domeSteps } from './dome-cells.ts';

/** Places at which a row of weights has had 0.5, 1.5, 2.5 … of `domeSteps` equal parts of its sum, each as a number with what is past the index. */
const evenParts = (weights: ArrayLike<number>): Float64Array => {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) sum += weights[i] as number;
  const places = new Float64Array(domeSteps);
  let [before, i] = [0, 0];
  for (let k = 0; k < domeSteps; k++) {
    const goal = ((k + 0.5) / domeSteps) * sum;
    while (i < weights.length - 1 && before + (weights[i] as number) < goal) before += weights[i++] as number;
    const weight = weights[i] as number;
    places[k] = i + (weight > 0 ? Math.min(Math.max((goal - before) / weight, 0), 1) : 0.5);
  }
  return places;
};

/**
 * Directions spread over the dome as its light is: each stands for the same share of it. Neighbours in the square lie near
 * each other on the dome, so that evenly spread numbers give evenly spread light: down the square by altitude (inverse of
 * the rows' sums), along it by bearing within that row.
 *
 * @param luminance a number a cell
 * @returns three numbers each, row after row of `domeSteps`; null where all is dark
 */
export const spreadByLight = (luminance: Float32Array): Float32Array | null => {
  const rows = Array.from({ length: domeSteps }, (_, r) => luminance.subarray(r * domeSteps, (r + 1) * domeSteps));
  const sums = rows.map((row) => row.reduce((sum, value) => sum + value, 0));
  if (!sums.some((sum) => sum > 0)) return null;
  const byRow = rows.map((row) => evenParts(row));
  const directions = new Float32Array(3 * domeSteps * domeSteps);
  evenParts(sums).forEach((place, a) => {
    const row = Math.min(Math.floor(place), domeSteps - 1);
    (byRow[row] as Float64Array).forEach((along, b) => {
      const column = Math.min(Math.floor(along), domeSteps - 1);
      directions.set(directionInCell(row * domeSteps + column, along - column, place - row), 3 * (a * domeSteps + b));
    });
  });
  return directions;
};
