import type { Mesh } from '../mesh.ts';

/** Triangles that share corners. */
export interface IndexedMesh {
  /** Three numbers a corner: u, up, v, or world x, y, z. */
  readonly points: Float64Array;
  /** Three corner numbers a triangle. */
  readonly triangles: Uint32Array;
}

/** Normals of corners: those of the triangles round each, weighted by area; not yet of unit length. */
const summedNormals = ({ points, triangles }: IndexedMesh): Float64Array => {
  const sums = new Float64Array(points.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const a = 3 * (triangles[t] as number);
    const b = 3 * (triangles[t + 1] as number);
    const c = 3 * (triangles[t + 2] as number);
    const x = points[a] as number;
    const y = points[a + 1] as number;
    const z = points[a + 2] as number;
    const bx = (points[b] as number) - x;
    const by = (points[b + 1] as number) - y;
    const bz = (points[b + 2] as number) - z;
    const cx = (points[c] as number) - x;
    const cy = (points[c + 1] as number) - y;
    const cz = (points[c + 2] as number) - z;
    const nx = by * cz - bz * cy;
    const ny = bz * cx - bx * cz;
    const nz = bx * cy - by * cx;
    for (let k = 0; k < 3; k++) {
      const at = 3 * (triangles[t + k] as number);
      sums[at] = (sums[at] as number) + nx;
      sums[at + 1] = (sums[at + 1] as number) + ny;
      sums[at + 2] = (sums[at + 2] as number) + nz;
    }
  }
  return sums;
};

/** Triangles with normals that run smoothly over all corners that they share. */
export const smoothMesh = (indexed: IndexedMesh): Mesh => {
  const { points, triangles } = indexed;
  const sums = summedNormals(indexed);
  const positions = new Float64Array(triangles.length * 3);
  const normals = new Float64Array(triangles.length * 3);
  for (let i = 0; i < triangles.length; i++) {
    const at = 3 * (triangles[i] as number);
    const [x, y, z] = [sums[at] as number, sums[at + 1] as number, sums[at + 2] as number];
    const size = Math.sqrt(x * x + y * y + z * z) || 1;
    positions[i * 3] = points[at] as number;
    positions[i * 3 + 1] = points[at + 1] as number;
    positions[i * 3 + 2] = points[at + 2] as number;
    normals[i * 3] = x / size;
    normals[i * 3 + 1] = y / size;
    normals[i * 3 + 2] = z / size;
  }
  return { positions, normals };
};
