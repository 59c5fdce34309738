import { ScanError } from '../scan-error.ts';
import type { ScanTools } from '../scan-tools.ts';
import { Accessors, type Rows } from './accessors.ts';
import { type DracoMesh, readDraco } from './draco.ts';
import type { DracoModule } from './draco-module.ts';
import type { GltfBytes } from './gltf-bytes.ts';
import type { JsonField } from './json-field.ts';

/** A part of a mesh that has one material. */
export interface Primitive {
  /** Three numbers a corner. */
  readonly positions: Float32Array;
  /** Three corners a triangle. */
  readonly indices: Uint32Array;
  /** Linear light of the corners, three or four numbers each; null = white. */
  readonly light: Rows | null;
  /** Places on pictures by number of the set, two numbers a corner. */
  readonly onPicture: (set: number) => Float32Array | null;
  /** Number of the material; -1 = none. */
  readonly material: number;
  /** Joints and their weights, four each a corner; null = stiff. */
  readonly joints: { readonly numbers: Rows<Uint32Array>; readonly weights: Rows } | null;
}

const dracoName = 'KHR_draco_mesh_compression';
/** Modes of primitives; between triangles and fans lie strips. */
const [points, triangles, fan] = [0, 4, 6];

/** Triangles of a strip, which turn to and fro, or of a fan (glTF 2.0, section 3.7.2.1). */
const listOf = (mode: number, order: Uint32Array): Uint32Array => {
  if (mode === triangles) return order.subarray(0, order.length - (order.length % 3));
  const list = new Uint32Array(Math.max(order.length - 2, 0) * 3);
  for (let t = 0; t < list.length / 3; t++) {
    const [a, b, c] = mode === fan ? [t + 1, t + 2, 0] : [t, t + 1 + (t % 2), t + 2 - (t % 2)];
    list.set([order[a] as number, order[b] as number, order[c] as number], t * 3);
  }
  return list;
};

/** Reads primitives, each once. */
export class PrimitiveReader {
  private readonly bytes: GltfBytes;
  private readonly draco: DracoModule | null;
  readonly accessors: Accessors;

  private constructor(json: JsonField, bytes: GltfBytes, draco: DracoModule | null) {
    this.bytes = bytes;
    this.draco = draco;
    this.accessors = new Accessors(json, bytes);
  }

  static async of(json: JsonField, bytes: GltfBytes, tools: ScanTools): Promise<PrimitiveReader> {
    const isPacked = json
      .get('meshes')
      .items()
      .some((mesh) =>
        mesh
          .get('primitives')
          .items()
          .some((primitive) => primitive.get('extensions').get(dracoName).isThere),
      );
    return new PrimitiveReader(json, bytes, isPacked ? await tools.startDraco() : null);
  }

  /** How many triangles a primitive says it has, before it is read; 0 where it has none. */
  countTriangles(primitive: JsonField): number {
    const mode = primitive.get('mode').whole(6, triangles);
    if (mode < triangles) return 0;
    const indices = primitive.get('indices');
    const named = indices.isThere ? indices : primitive.get('attributes').get('POSITION');
    const count = this.accessors.count(named.whole());
    return mode === triangles ? Math.floor(count / 3) : Math.max(count - 2, 0);
  }

  isPoints(primitive: JsonField): boolean {
    return primitive.get('mode').whole(6, triangles) === points;
  }

  read(primitive: JsonField): Primitive {
    const packed = primitive.get('extensions').get(dracoName);
    if (!packed.isThere || !this.draco) return this.readParts(primitive, null);
    const bytes = this.bytes.view(packed.get('bufferView').whole());
    return readDraco(this.draco, bytes, (mesh) => this.readParts(primitive, { mesh, ids: packed.get('attributes') }));
  }

  private readParts(primitive: JsonField, packed: { mesh: DracoMesh; ids: JsonField } | null): Primitive {
    const attributes = primitive.get('attributes');
    const idOf = (name: string) => packed?.ids.get(name);
    const numbers = (name: string, widths: readonly number[]): Rows | null => {
      const field = attributes.get(name);
      if (!field.isThere) return null;
      const id = idOf(name);
      if (!packed || !id?.isThere) return this.accessors.numbers(field.whole(), widths);
      const rows = packed.mesh.numbers(id.whole(), this.accessors.fullOf(field.whole()));
      return widths.includes(rows.width) ? rows : field.refuse('is not what it is used for');
    };
    const wholes = (name: string): Rows<Uint32Array> | null => {
      const field = attributes.get(name);
      if (!field.isThere) return null;
      const id = idOf(name);
      return packed && id?.isThere ? packed.mesh.wholes(id.whole()) : this.accessors.wholes(field.whole(), [4]);
    };
    const positions = numbers('POSITION', [3]);
    if (!positions) throw new ScanError('The file is broken: a mesh has no places of its corners');
    const mode = primitive.get('mode').whole(6, triangles);
    const indices = packed ? packed.mesh.indices : listOf(mode, this.order(primitive, positions.count));
    const last = indices.reduce((most, index) => Math.max(most, index), 0);
    if (indices.length > 0 && last >= positions.count)
      primitive.get('indices').refuse('names corners that are not there');
    const sameCount = <T extends Rows | Rows<Uint32Array>>(rows: T | null): T | null =>
      rows && rows.count >= positions.count ? rows : null;
    const [jointNumbers, weights] = [sameCount(wholes('JOINTS_0')), sameCount(numbers('WEIGHTS_0', [4]))];
    const onPicture = new Map<number, Float32Array | null>();
    for (let set = 0; set < 8; set++) onPicture.set(set, sameCount(numbers(`TEXCOORD_${set}`, [2]))?.values ?? null);
    return {
      positions: positions.values,
      indices,
      light: sameCount(numbers('COLOR_0', [3, 4])),
      onPicture: (set) => onPicture.get(set) ?? null,
      material: primitive.get('material').isThere ? primitive.get('material').whole() : -1,
      joints: jointNumbers && weights ? { numbers: jointNumbers, weights } : null,
    };
  }

  private order(primitive: JsonField, count: number): Uint32Array {
    const indices = primitive.get('indices');
    if (indices.isThere) return this.accessors.wholes(indices.whole()).values;
    return Uint32Array.from({ length: count }, (_, i) => i);
  }
}
