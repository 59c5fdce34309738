import type { RawMesh } from '../../../../app/web/scans/scanned-mesh.ts';
import { lumpyGround } from './made-documents.ts';

/** The lumpy ground as a mesh that was read. */
export const lumpyMesh = (cells: number, seed: number): RawMesh => {
  const { positions, indices } = lumpyGround(cells, seed);
  return { positions: Float64Array.from(positions), indices, colours: null };
};

/** A closed box from a corner on, faces outward. */
export const boxOfMesh = (
  from: readonly [number, number, number],
  size: readonly [number, number, number],
): RawMesh => {
  const positions = Float64Array.from({ length: 24 }, (_, i) => {
    const [corner, axis] = [Math.floor(i / 3), (i % 3) as 0 | 1 | 2];
    return from[axis] + ((corner >> axis) & 1) * size[axis];
  });
  // corners are numbered by bits x, y, z; each face runs counter-clockwise seen from outside
  const faces = [
    [0, 4, 6, 2],
    [1, 3, 7, 5],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 2, 3, 1],
    [4, 5, 7, 6],
  ] as const;
  return { positions, indices: Uint32Array.from(faces.flatMap(([a, b, c, d]) => [a, b, c, a, c, d])), colours: null };
};
