import { MeshoptDecoder } from 'meshoptimizer/decoder';
import { decodeBase64 } from '../../../../core/scan/base64.ts';
import { maxUnpackedBytes } from '../limits.ts';
import { ScanError } from '../scan-error.ts';
import type { GltfFile } from './gltf-file.ts';
import type { JsonField } from './json-field.ts';

const meshoptNames = ['EXT_meshopt_compression', 'KHR_meshopt_compression'];

/** Bytes of a data URI (RFC 2397), base64 or percent-encoded. */
const bytesOfDataUri = (field: JsonField): Uint8Array => {
  const uri = field.text();
  const comma = uri.indexOf(',');
  if (comma < 0) return field.refuse('has no data');
  const body = uri.slice(comma + 1);
  if (!/;base64$/i.test(uri.slice(0, comma))) {
    try {
      return new TextEncoder().encode(decodeURIComponent(body));
    } catch {
      return field.refuse('has broken data');
    }
  }
  const letters = body.replace(/\s|=+$/g, '');
  return decodeBase64(letters.padEnd(Math.ceil(letters.length / 4) * 4, '=')) ?? field.refuse('has broken data');
};

/** The bytes behind buffers and buffer views, unpacked where they are packed, within a budget. */
export class GltfBytes {
  private readonly file: GltfFile;
  private readonly buffers = new Map<number, Uint8Array>();
  private readonly views = new Map<number, Uint8Array>();
  private unpackedBytes = 0;

  private constructor(file: GltfFile) {
    this.file = file;
  }

  static async of(file: GltfFile): Promise<GltfBytes> {
    const isPacked = file.json
      .get('bufferViews')
      .items()
      .some((view) => meshoptNames.some((name) => view.get('extensions').get(name).isThere));
    if (isPacked && !MeshoptDecoder.supported) throw new ScanError('Its packing can’t be undone in this browser');
    if (isPacked) await MeshoptDecoder.ready;
    return new GltfBytes(file);
  }

  /** Takes so many bytes from what may be unpacked. */
  spend(bytes: number): void {
    this.unpackedBytes += bytes;
    if (!(this.unpackedBytes <= maxUnpackedBytes))
      throw new ScanError(`It would unpack to more than ${maxUnpackedBytes / 1e6} MB`);
  }

  /** Bytes of a picture or buffer view's own range; what is behind a data URI is kept. */
  dataUri(field: JsonField): Uint8Array {
    return bytesOfDataUri(field);
  }

  /** The bytes of a buffer view. */
  view(index: number): Uint8Array {
    const known = this.views.get(index);
    if (known) return known;
    const view = this.file.json.get('bufferViews').entry(index);
    const packed = meshoptNames.map((name) => view.get('extensions').get(name)).find((field) => field.isThere);
    const bytes = packed ? this.unpack(packed) : this.range(view);
    this.views.set(index, bytes);
    return bytes;
  }

  /** Step from row to row in a view; 0 = rows follow each other closely. */
  stride(index: number): number {
    return this.file.json.get('bufferViews').entry(index).get('byteStride').whole(255, 0);
  }

  private buffer(index: number, asked: JsonField): Uint8Array {
    const known = this.buffers.get(index);
    if (known) return known;
    const uri = this.file.json.get('buffers').entry(index).get('uri');
    const bytes = uri.isThere ? bytesOfDataUri(uri) : index === 0 ? this.file.binary : null;
    if (!bytes) return asked.refuse('points to data that is not in the file');
    this.buffers.set(index, bytes);
    return bytes;
  }

  private range(field: JsonField): Uint8Array {
    const buffer = this.buffer(field.get('buffer').whole(), field);
    const [from, length] = [field.get('byteOffset').whole(undefined, 0), field.get('byteLength').whole()];
    if (from + length > buffer.length) return field.refuse('reaches beyond the file');
    return buffer.subarray(from, from + length);
  }

  private unpack(packed: JsonField): Uint8Array {
    const [count, stride] = [packed.get('count').whole(), packed.get('byteStride').whole(256)];
    this.spend(count * stride);
    const bytes = new Uint8Array(count * stride);
    const [mode, filter] = [packed.get('mode').text(), packed.get('filter').text('NONE')];
    try {
      MeshoptDecoder.decodeGltfBuffer(bytes, count, stride, this.range(packed), mode, filter);
    } catch (error) {
      if (error instanceof ScanError) throw error;
      return packed.refuse('can’t be unpacked');
    }
    return bytes;
  }
}
