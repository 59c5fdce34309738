/** Rounds of the update: more change the dose by less than a hundredth of a stop. */
const rounds = 3000;

/**
 * Weights of at least 0 under which sums come out as even as they can: A w near 1 in every row.
 *
 * By the multiplicative update of Richardson (1972) and Lucy (1974), the Kullback-Leibler form of Lee and Seung (2001, NIPS
 * 13, 556, equation 5): each weight is multiplied by the mean of 1 / (A w) over the rows that it feeds. Weights never
 * fall below 0, the divergence never rises, and it is the same each time: it starts from equal weights. Too little in a row
 * counts for more than too much, as a dark gap does beside a bright spot.
 *
 * @param matrix at least one row, all of equal length, at least 0; each row has something above 0
 * @returns one weight a column, together 1; 0 for columns that feed nothing
 */
export const evenWeights = (matrix: readonly (readonly number[])[]): number[] => {
  const columns = (matrix[0] as readonly number[]).length;
  const columnSums = Array.from({ length: columns }, (_, k) =>
    matrix.reduce((sum, row) => sum + (row[k] as number), 0),
  );
  let weights = columnSums.map((sum) => (sum > 0 ? 1 / columns : 0));
  for (let round = 0; round < rounds; round++) {
    const lack = matrix.map((row) => 1 / row.reduce((sum, a, k) => sum + a * (weights[k] as number), 0));
    weights = weights.map((weight, k) => {
      const sum = columnSums[k] as number;
      if (sum === 0) return 0;
      return (weight * matrix.reduce((all, row, j) => all + (row[k] as number) * (lack[j] as number), 0)) / sum;
    });
  }
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
};
