/** SVG path through points given as x, y, x, y … in shares of a drawing. */
export const linePath = (line: readonly number[], [width, height]: readonly [number, number]): string => {
  let path = '';
  for (let i = 0; i < line.length; i += 2) {
    const [x, y] = [(line[i] as number) * width, (line[i + 1] as number) * height];
    path += `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
  }
  return path;
};
