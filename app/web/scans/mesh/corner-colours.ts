import { byteFromLinear, linearFromByte } from '../../../../core/scan/mesh-colours.ts';

/** sRGB bytes of linear light, finely enough stepped that no byte is off. */
const steps = 16384;
const byteOfStep = Uint8Array.from({ length: steps + 1 }, (_, step) => byteFromLinear(step / steps));

/** Nearest sRGB byte of linear light, from a table; light outside 0 to 1 is cut off, NaN is black. */
export const toByte = (linear: number): number => {
  if (!(linear > 0)) return 0;
  // the steps are too coarse for the darkest bytes
  if (linear < 0.02) return byteFromLinear(linear);
  return byteOfStep[Math.round(Math.min(linear, 1) * steps)] as number;
};

/** Colours of triangles as the mean light of their corners; `light` has three numbers a corner. */
export const coloursOfTriangles = (light: Float32Array, indices: Uint32Array): Uint8Array => {
  const colours = new Uint8Array(indices.length);
  for (let t = 0; t < indices.length; t += 3)
    for (let k = 0; k < 3; k++) {
      let sum = 0;
      for (let c = 0; c < 3; c++) sum += light[(indices[t + c] as number) * 3 + k] as number;
      colours[t + k] = toByte(sum / 3);
    }
  return colours;
};

/** Light of corners as the mean of the triangles round them. */
export const lightOfCorners = (colours: Uint8Array, indices: Uint32Array, cornerCount: number): Float32Array => {
  const light = new Float32Array(cornerCount * 3);
  const round = new Uint32Array(cornerCount);
  for (let i = 0; i < indices.length; i++) {
    const corner = indices[i] as number;
    const first = i - (i % 3);
    round[corner] = (round[corner] as number) + 1;
    for (let k = 0; k < 3; k++)
      light[corner * 3 + k] =
        (light[corner * 3 + k] as number) + (linearFromByte[colours[first + k] as number] as number);
  }
  for (let i = 0; i < light.length; i++)
    light[i] = (light[i] as number) / Math.max(round[Math.floor(i / 3)] as number, 1);
  return light;
};
