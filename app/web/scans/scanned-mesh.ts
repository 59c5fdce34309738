/** Kinds of files that are read. */
export type ScanKind = 'gltf' | 'obj' | 'ply';

/** Triangles that share corners, as a file has them. */
export interface RawMesh {
  /** Three numbers a corner, in units and axes of the file. */
  readonly positions: Float64Array;
  /** Three corners a triangle, counter-clockwise seen from outside. */
  readonly indices: Uint32Array;
  /** sRGB, three bytes a triangle; null = no colours. */
  readonly colours: Uint8Array | null;
}

/** A mesh read from a file: sound (finite, triangles with area, corners that meet made one) and within the limits. */
export interface ScannedMesh extends RawMesh {
  readonly kind: ScanKind;
  /** What was changed or left out, in sentences without their full stops. */
  readonly leftOut: readonly string[];
}
