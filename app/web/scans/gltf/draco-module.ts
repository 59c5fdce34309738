/** Something in the decoder's memory. */
interface Made {
  /** Where it lies; 0 = nowhere. */
  readonly ptr?: number;
}

export interface DracoMeshHandle extends Made {
  num_faces(): number;
  num_points(): number;
}

export interface DracoAttribute extends Made {
  num_components(): number;
  /** Whether whole numbers come out as shares of their type's largest when they are asked for as floats. */
  normalized(): boolean;
}

export interface DracoDecoder extends Made {
  GetEncodedGeometryType(buffer: DracoBuffer): number;
  DecodeBufferToMesh(buffer: DracoBuffer, mesh: DracoMeshHandle): { ok(): boolean };
  GetAttributeByUniqueId(mesh: DracoMeshHandle, id: number): DracoAttribute | null;
  GetTrianglesUInt32Array(mesh: DracoMeshHandle, bytes: number, pointer: number): boolean;
  GetAttributeDataArrayForAllPoints(
    mesh: DracoMeshHandle,
    attribute: DracoAttribute,
    type: number,
    bytes: number,
    pointer: number,
  ): boolean;
}

export interface DracoBuffer extends Made {
  Init(bytes: Int8Array, length: number): void;
}

/** The part of Draco's decoder (its glTF build, 1.5) that is used. */
export interface DracoModule {
  readonly Decoder: new () => DracoDecoder;
  readonly DecoderBuffer: new () => DracoBuffer;
  readonly Mesh: new () => DracoMeshHandle;
  readonly TRIANGULAR_MESH: number;
  readonly DT_FLOAT32: number;
  readonly DT_UINT32: number;
  readonly HEAPU8: Uint8Array;
  _malloc(bytes: number): number;
  _free(pointer: number): void;
  destroy(made: Made): void;
}
