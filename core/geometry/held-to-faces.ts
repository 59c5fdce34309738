import { facesOf } from './faces.ts';
import type { Mesh } from './mesh.ts';

/** A corner normal leans from its own face so far that this cosine is left, at most; farther would turn light off. */
export const leastCosine = 0.1;

/**
 * Writes a direction at length 1, pulled toward its face where it leans from it too far.
 *
 * @param at where in `out` its three numbers go
 * @param vx the direction, of any length; where it is none, the face's is taken
 * @param fx unit normal of the face; zero where it has no area: then nothing is pulled, and no direction at all becomes up
 */
export const setUnit = (
  out: Float64Array,
  at: number,
  vx: number,
  vy: number,
  vz: number,
  fx: number,
  fy: number,
  fz: number,
): void => {
  const length = Math.sqrt(vx * vx + vy * vy + vz * vz);
  const hasSum = length > 1e-12;
  let [x, y, z] = hasSum ? [vx / length, vy / length, vz / length] : [fx, fy, fz];
  const cosine = x * fx + y * fy + z * fz;
  const hasFace = fx !== 0 || fy !== 0 || fz !== 0;
  if (hasFace && cosine < leastCosine) {
    const pull = leastCosine - cosine;
    x += pull * fx;
    y += pull * fy;
    z += pull * fz;
  }
  const scale = Math.sqrt(x * x + y * y + z * z);
  out[at] = scale > 0 ? x / scale : 0;
  out[at + 1] = scale > 0 ? y / scale : 1;
  out[at + 2] = scale > 0 ? z / scale : 0;
};

/** The same triangles, their normals pulled toward their faces where they lean too far, as on a ball pressed flat. */
export const heldToFaces = ({ positions, normals }: Mesh): Mesh => {
  const corners = Uint32Array.from({ length: positions.length / 3 }, (_, c) => c);
  const faces = facesOf(positions, corners).normals;
  const out = new Float64Array(normals.length);
  for (let at = 0; at < normals.length; at += 3) {
    const f = 3 * Math.floor(at / 9);
    const [x, y, z] = [normals[at] as number, normals[at + 1] as number, normals[at + 2] as number];
    setUnit(out, at, x, y, z, faces[f] as number, faces[f + 1] as number, faces[f + 2] as number);
  }
  return { positions, normals: out };
};
