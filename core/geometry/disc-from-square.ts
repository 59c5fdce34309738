/** Square to unit disc, keeping neighbours together and the middle in the middle (Shirley and Chiu 1997). */
export const discFromSquare = (u: number, v: number): readonly [number, number] => {
  const a = 2 * u - 1;
  const b = 2 * v - 1;
  if (a === 0 && b === 0) return [0, 0];
  const wide = Math.abs(a) > Math.abs(b);
  const radius = wide ? a : b;
  const turn = wide ? (Math.PI / 4) * (b / a) : Math.PI / 2 - (Math.PI / 4) * (a / b);
  return [radius * Math.cos(turn), radius * Math.sin(turn)];
};
