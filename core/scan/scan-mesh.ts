import type { Mesh } from '../geometry/mesh.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { creaseNormals } from './crease-normals.ts';
import { tintsOf } from './mesh-colours.ts';
import { decodeScan, type PackedScan, type ScanTriangles } from './scan-code.ts';

/** A scan as the stage takes it. */
export interface ScanMesh {
  /** World axes, metres; stands on the ground with the middle of its box over the origin. */
  readonly mesh: Mesh;
  /** Linear RGB that the finish's reflectance is multiplied with, three numbers a triangle; mean luminance 1. */
  readonly tints: Float32Array | null;
}

/** Faces of a scan that differ by more meet in an edge. Common practice, no published source. */
const creaseRadians = radiansFromDegrees(50);

/** Triangles of an unpacked scan, each corner on its own, with normals. */
const meshOf = ({ positions, indices }: ScanTriangles): Mesh => {
  const corners = new Float64Array(indices.length * 3);
  for (let corner = 0; corner < indices.length; corner++) {
    const vertex = indices[corner] as number;
    for (let k = 0; k < 3; k++) corners[corner * 3 + k] = positions[vertex * 3 + k] as number;
  }
  return { positions: corners, normals: creaseNormals(positions, indices, creaseRadians) };
};

const known = new WeakMap<PackedScan, ScanMesh>();

/**
 * Triangles of a scan of the document, at scale 1; worked out once for each scan object.
 *
 * @throws ScanDataError when its data is broken
 */
export const scanMesh = (scan: PackedScan): ScanMesh => {
  const before = known.get(scan);
  if (before) return before;
  const triangles = decodeScan(scan);
  const { positions, indices, colours } = triangles;
  const made: ScanMesh = {
    mesh: meshOf(triangles),
    tints: colours && tintsOf({ positions, indices, colours }),
  };
  known.set(scan, made);
  return made;
};
