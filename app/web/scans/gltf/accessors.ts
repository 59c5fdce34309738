import { maxReadCorners } from '../limits.ts';
import type { GltfBytes } from './gltf-bytes.ts';
import type { JsonField } from './json-field.ts';

type Numbers = Int8Array | Uint8Array | Int16Array | Uint16Array | Uint32Array | Float32Array;

interface Component {
  readonly bytes: number;
  /** What a full integer stands for when it is normalized. */
  readonly full: number;
  readonly array: new (buffer: ArrayBuffer) => Numbers;
  read(view: DataView, at: number): number;
}

/** Component types of glTF 2.0, section 3.6.2.2. */
const components: Readonly<Record<number, Component>> = {
  5120: { bytes: 1, full: 127, array: Int8Array, read: (view, at) => view.getInt8(at) },
  5121: { bytes: 1, full: 255, array: Uint8Array, read: (view, at) => view.getUint8(at) },
  5122: { bytes: 2, full: 32767, array: Int16Array, read: (view, at) => view.getInt16(at, true) },
  5123: { bytes: 2, full: 65535, array: Uint16Array, read: (view, at) => view.getUint16(at, true) },
  5125: { bytes: 4, full: 4294967295, array: Uint32Array, read: (view, at) => view.getUint32(at, true) },
  5126: { bytes: 4, full: 1, array: Float32Array, read: (view, at) => view.getFloat32(at, true) },
};
const float = 5126;
const widths: Readonly<Record<string, number>> = { SCALAR: 1, VEC2: 2, VEC3: 3, VEC4: 4, MAT4: 16 };

/** Rows of numbers. */
export interface Rows<T extends Numbers = Float32Array> {
  readonly values: T;
  readonly width: number;
  readonly count: number;
}

const componentOf = (field: JsonField): Component & { readonly type: number } => {
  const type = field.whole();
  const component = components[type];
  return component ? { ...component, type } : field.refuse('is no type of numbers');
};

/** Reads accessors (glTF 2.0, section 3.6.2): rows of a view, or noughts, with sparse rows put over them. */
export class Accessors {
  private readonly list: JsonField;
  private readonly bytes: GltfBytes;

  constructor(json: JsonField, bytes: GltfBytes) {
    this.list = json.get('accessors');
    this.bytes = bytes;
  }

  /** The field of an accessor. */
  field(index: number): JsonField {
    return this.list.entry(index);
  }

  count(index: number): number {
    return this.field(index).get('count').whole(maxReadCorners);
  }

  /** Whether the numbers of an accessor are shares of their type's full value. */
  fullOf(index: number): number {
    const field = this.field(index);
    return field.get('normalized').value === true ? componentOf(field.get('componentType')).full : 1;
  }

  /** Numbers of an accessor with one of these widths; integers that are normalized become shares. */
  numbers(index: number, allowed: readonly number[]): Rows {
    return this.read(index, allowed, Float32Array);
  }

  /** Whole numbers of an accessor. */
  wholes(index: number, allowed: readonly number[] = [1]): Rows<Uint32Array> {
    return this.read(index, allowed, Uint32Array);
  }

  private read<T extends Float32Array | Uint32Array>(
    index: number,
    allowed: readonly number[],
    Make: new (length: number) => T,
  ): Rows<T> {
    const field = this.field(index);
    const width = widths[field.get('type').text()] ?? 0;
    if (!allowed.includes(width)) return field.get('type').refuse('is not what it is used for');
    const count = this.count(index);
    this.bytes.spend(count * width * 4);
    const values = new Make(count * width);
    const view = field.get('bufferView');
    const component = componentOf(field.get('componentType'));
    const full = this.fullOf(index);
    if (view.isThere) {
      const at = { view: view.whole(), offset: field.get('byteOffset').whole(undefined, 0) };
      this.rows(field, at, component, { values, width, count }, null, full);
    }
    const sparse = field.get('sparse');
    if (sparse.isThere) this.putSparse(sparse, component, { values, width, count }, full);
    return { values, width, count };
  }

  /** Reads rows of a view into the rows that `to` names, or in order. */
  private rows<T extends Numbers>(
    field: JsonField,
    { view, offset }: { view: number; offset: number },
    component: Component & { readonly type: number },
    { values, width, count }: Rows<T>,
    to: Uint32Array | null,
    full: number,
  ): void {
    const bytes = this.bytes.view(view);
    const stride = this.bytes.stride(view) || width * component.bytes;
    if (count > 0 && offset + (count - 1) * stride + width * component.bytes > bytes.length)
      field.refuse('reaches beyond its data');
    const least = component.type === float ? Number.NEGATIVE_INFINITY : -1;
    if (!to && stride === width * component.bytes) {
      // all machines that browsers run on have glTF's byte order, so closely packed rows can be taken as they are
      values.set(new component.array(bytes.slice(offset, offset + count * stride).buffer));
    } else {
      const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
      for (let row = 0; row < count; row++) {
        const into = (to ? (to[row] as number) : row) * width;
        for (let k = 0; k < width; k++)
          values[into + k] = component.read(data, offset + row * stride + k * component.bytes);
      }
    }
    if (full === 1) return;
    for (let row = 0; row < count; row++) {
      const into = (to ? (to[row] as number) : row) * width;
      for (let k = 0; k < width; k++) values[into + k] = Math.max((values[into + k] as number) / full, least);
    }
  }

  private putSparse<T extends Numbers>(
    sparse: JsonField,
    component: Component & { readonly type: number },
    rows: Rows<T>,
    full: number,
  ): void {
    const count = sparse.get('count').whole(rows.count);
    const place = (field: JsonField) => ({
      view: field.get('bufferView').whole(),
      offset: field.get('byteOffset').whole(undefined, 0),
    });
    const [at, what] = [sparse.get('indices'), sparse.get('values')];
    const indices = { values: new Uint32Array(count), width: 1, count };
    this.rows(at, place(at), componentOf(at.get('componentType')), indices, null, 1);
    if (indices.values.some((index) => index >= rows.count)) at.refuse('names rows that are not there');
    this.rows(what, place(what), component, { ...rows, count }, indices.values, full);
  }
}
