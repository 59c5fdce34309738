import type { Mesh } from '../geometry/mesh.ts';
import { meshOfSkin } from '../geometry/skin.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { takeTriangles } from './checked-scans.ts';
import { tintsOf } from './mesh-colours.ts';
import type { PackedScan } from './scan-code.ts';

/** A scan as the stage takes it. */
export interface ScanMesh {
  /** World axes, metres; stands on the ground with the middle of its box over the origin. */
  readonly mesh: Mesh;
  /** Linear RGB that the finish's reflectance is multiplied with, three numbers a triangle; mean luminance 1. */
  readonly tints: Float32Array | null;
}

/** Faces of a scan that differ by more meet in an edge. Common practice, no published source. */
const creaseRadians = radiansFromDegrees(50);

const known = new WeakMap<PackedScan, ScanMesh>();

/**
 * Triangles of a scan of the document, at scale 1; worked out once for each scan object.
 *
 * @throws ScanDataError when its data is broken
 */
export const scanMesh = (scan: PackedScan): ScanMesh => {
  const before = known.get(scan);
  if (before) return before;
  const { positions, indices, colours } = takeTriangles(scan);
  const made: ScanMesh = {
    mesh: meshOfSkin({ places: positions, triangles: indices }, creaseRadians),
    tints: colours && tintsOf({ positions, indices, colours }),
  };
  known.set(scan, made);
  return made;
};
