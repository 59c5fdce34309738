/** Area within a closed line of points x, y, x, y … in shares of a drawing, in its square units. */
export const ringArea = (ring: readonly number[], [width, height]: readonly [number, number]): number => {
  let twice = 0;
  for (let i = 0; i + 3 < ring.length; i += 2) {
    const [ax, ay, bx, by] = ring.slice(i, i + 4) as [number, number, number, number];
    twice += ax * by - bx * ay;
  }
  return (Math.abs(twice) / 2) * width * height;
};
