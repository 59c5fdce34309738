/** A picture with four numbers a pixel, the fourth 1, from one with three: what graphics cards take. */
export const withFourth = (values: Float32Array): Float32Array<ArrayBuffer> => {
  const pixels = values.length / 3;
  const result = new Float32Array(4 * pixels).fill(1);
  for (let i = 0; i < pixels; i++) for (let c = 0; c < 3; c++) result[4 * i + c] = values[3 * i + c] as number;
  return result;
};
