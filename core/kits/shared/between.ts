/** A number between two, drawn by chance. */
export const between = (random: () => number, low: number, high: number): number => low + (high - low) * random();

/** A whole number to seed a part's own chance with. */
export const seedFrom = (random: () => number): number => Math.floor(random() * 1_000_000);

/**
 * Cuts a length into uneven pieces that fill it exactly. Where it is shorter than a piece there is one.
 *
 * @param low shortest piece before they are stretched to fit, metres
 * @param high longest
 */
export const unevenPieces = (random: () => number, length: number, low: number, high: number): number[] => {
  const pieces: number[] = [];
  let sum = 0;
  while (sum < length - (low + high) / 4) {
    const piece = between(random, low, high);
    pieces.push(piece);
    sum += piece;
  }
  if (pieces.length === 0) return [length];
  return pieces.map((piece) => (piece * length) / sum);
};
