import { maxReadCorners, maxReadTriangles } from '../limits.ts';
import { ScanError } from '../scan-error.ts';
import type { Rows } from './accessors.ts';
import type { DracoDecoder, DracoMeshHandle, DracoModule } from './draco-module.ts';

/** A mesh that Draco packed, unpacked: triangles, and numbers of its corners. */
export interface DracoMesh {
  readonly indices: Uint32Array;
  /** Numbers of an attribute by its id in the packed mesh; `full` as of a normalized accessor. */
  numbers(id: number, full: number): Rows;
  wholes(id: number): Rows<Uint32Array>;
}

const broken = () => new ScanError('The file is broken: a packed mesh can’t be unpacked');

/** A copy of numbers that the decoder writes into its memory. */
const copyOut = (module: DracoModule, bytes: number, write: (pointer: number) => boolean): ArrayBuffer => {
  const pointer = module._malloc(bytes);
  if (!pointer) throw new ScanError('There is not enough memory to unpack it');
  try {
    if (!write(pointer)) throw broken();
    // the memory may have grown, so its view is taken only now
    return module.HEAPU8.slice(pointer, pointer + bytes).buffer as ArrayBuffer;
  } finally {
    module._free(pointer);
  }
};

const attributeRows = <T extends Float32Array | Uint32Array>(
  module: DracoModule,
  decoder: DracoDecoder,
  mesh: DracoMeshHandle,
  id: number,
  [type, Make]: readonly [number, new (buffer: ArrayBuffer) => T],
): Rows<T> & { readonly areShares: boolean } => {
  const attribute = decoder.GetAttributeByUniqueId(mesh, id);
  if (!attribute?.ptr) throw broken();
  const [width, count] = [attribute.num_components(), mesh.num_points()];
  if (!(width >= 1 && width <= 4)) throw broken();
  const bytes = count * width * 4;
  const buffer = copyOut(module, bytes, (pointer) =>
    decoder.GetAttributeDataArrayForAllPoints(mesh, attribute, type, bytes, pointer),
  );
  return { values: new Make(buffer), width, count, areShares: attribute.normalized() };
};

/**
 * Unpacks a mesh and hands it to `use`; its memory is given back afterwards. What goes wrong in the decoder, which is
 * WebAssembly, is caught and said.
 */
export const readDraco = <T>(module: DracoModule, bytes: Uint8Array, use: (mesh: DracoMesh) => T): T => {
  const buffer = new module.DecoderBuffer();
  const decoder = new module.Decoder();
  const mesh = new module.Mesh();
  try {
    buffer.Init(new Int8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength), bytes.length);
    if (decoder.GetEncodedGeometryType(buffer) !== module.TRIANGULAR_MESH) throw broken();
    if (!decoder.DecodeBufferToMesh(buffer, mesh).ok()) throw broken();
    const [faces, points] = [mesh.num_faces(), mesh.num_points()];
    if (faces > maxReadTriangles || points > maxReadCorners)
      throw new ScanError('A packed mesh has more triangles than are read');
    const length = faces * 12;
    const indices = new Uint32Array(
      copyOut(module, length, (pointer) => decoder.GetTrianglesUInt32Array(mesh, length, pointer)),
    );
    return use({
      indices,
      numbers: (id, full) => {
        const rows = attributeRows(module, decoder, mesh, id, [module.DT_FLOAT32, Float32Array]);
        const { values } = rows;
        // the decoder has divided them itself where the packed mesh calls them normalized
        if (full !== 1 && !rows.areShares)
          for (let i = 0; i < values.length; i++) values[i] = (values[i] as number) / full;
        return rows;
      },
      wholes: (id) => attributeRows(module, decoder, mesh, id, [module.DT_UINT32, Uint32Array]),
    });
  } catch (error) {
    throw error instanceof ScanError ? error : broken();
  } finally {
    for (const made of [mesh, decoder, buffer]) module.destroy(made);
  }
};
