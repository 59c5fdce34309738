import { decodeSrgb, encodeSrgb } from '../colour/srgb.ts';

/** Linear light of an sRGB byte. */
export const linearFromByte: Float64Array = Float64Array.from({ length: 256 }, (_, byte) => decodeSrgb(byte / 255));

/** Nearest sRGB byte of linear light, 0 to 1. */
export const byteFromLinear = (linear: number): number => Math.round(255 * encodeSrgb(linear));

/** Luminance of linear sRGB light (IEC 61966-2-1, primaries of BT.709). */
export const luminanceOf = (red: number, green: number, blue: number): number =>
  0.2126 * red + 0.7152 * green + 0.0722 * blue;

/** Area of a triangle, in the square of the unit of its corners. */
const areaOf = (positions: Float64Array, a: number, b: number, c: number): number => {
  const ux = (positions[b * 3] as number) - (positions[a * 3] as number);
  const uy = (positions[b * 3 + 1] as number) - (positions[a * 3 + 1] as number);
  const uz = (positions[b * 3 + 2] as number) - (positions[a * 3 + 2] as number);
  const vx = (positions[c * 3] as number) - (positions[a * 3] as number);
  const vy = (positions[c * 3 + 1] as number) - (positions[a * 3 + 1] as number);
  const vz = (positions[c * 3 + 2] as number) - (positions[a * 3 + 2] as number);
  return Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2) / 2;
};

/** A mesh whose triangles have colours of their own. */
export interface ColouredTriangles {
  readonly positions: Float64Array;
  readonly indices: Uint32Array;
  /** sRGB, three bytes a triangle. */
  readonly colours: Uint8Array;
}

/** Mean colour of a surface in linear light, each triangle counted by its area: [red, green, blue], 0 to 1. */
export const meanColour = ({ positions, indices, colours }: ColouredTriangles): [number, number, number] => {
  let [red, green, blue, total] = [0, 0, 0, 0];
  for (let t = 0; t < indices.length; t += 3) {
    const area = areaOf(positions, indices[t] as number, indices[t + 1] as number, indices[t + 2] as number);
    total += area;
    red += area * (linearFromByte[colours[t] as number] as number);
    green += area * (linearFromByte[colours[t + 1] as number] as number);
    blue += area * (linearFromByte[colours[t + 2] as number] as number);
  }
  return total > 0 ? [red / total, green / total, blue / total] : [0, 0, 0];
};

/**
 * What a finish's reflectance is multiplied with on each triangle: its linear colour over the mean luminance of the
 * surface, so that the surface as a whole returns what the finish says. All ones where everything is black.
 *
 * @returns linear RGB, three numbers a triangle
 */
export const tintsOf = (coloured: ColouredTriangles): Float32Array => {
  const mean = luminanceOf(...meanColour(coloured));
  const tintFromByte = Float32Array.from(linearFromByte, (linear) => (mean > 0 ? linear / mean : 1));
  const tints = new Float32Array(coloured.colours.length);
  for (let i = 0; i < tints.length; i++) tints[i] = tintFromByte[coloured.colours[i] as number] as number;
  return tints;
};
