import { ScanError } from '../scan-error.ts';
import { JsonField } from './json-field.ts';

/** A glTF asset: its JSON and, in a GLB, the binary chunk. */
export interface GltfFile {
  readonly json: JsonField;
  readonly binary: Uint8Array | null;
}

/** Most marks of structure in the JSON; each may become an object in memory. */
const mostMarks = 4_000_000;
const marks = new Set([...'{[,'].map((mark) => mark.charCodeAt(0)));

const [jsonChunk, binaryChunk] = [0x4e4f534a, 0x004e4942];

const parseJson = (bytes: Uint8Array): JsonField => {
  let count = 0;
  for (const byte of bytes) if (marks.has(byte)) count++;
  if (count > mostMarks) throw new ScanError('Its JSON is too large to be read');
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder().decode(bytes).replace(/^\ufeff/, ''));
  } catch {
    throw new ScanError('The file is broken: its JSON has a stray character or breaks off');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new ScanError('The file is broken: its JSON is no glTF');
  return new JsonField(value);
};

/** Chunks of a GLB (glTF 2.0, section 4.4). */
const readChunks = (bytes: Uint8Array): GltfFile => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 20) throw new ScanError('The file breaks off');
  const version = view.getUint32(4, true);
  if (version !== 2) throw new ScanError(`It is a GLB of version ${version}; version 2 is read`);
  if (view.getUint32(8, true) > bytes.length) throw new ScanError('The file breaks off: it is shorter than it says');
  const length = view.getUint32(8, true);
  let json: JsonField | null = null;
  let binary: Uint8Array | null = null;
  for (let at = 12; at + 8 <= length; ) {
    const [size, type] = [view.getUint32(at, true), view.getUint32(at + 4, true)];
    const from = at + 8;
    if (from + size > length) throw new ScanError('The file is broken: one of its chunks is longer than the file');
    if (!json && type === jsonChunk) json = parseJson(bytes.subarray(from, from + size));
    else if (json && !binary && type === binaryChunk) binary = bytes.subarray(from, from + size);
    at = from + size + ((4 - (size % 4)) % 4);
  }
  if (!json) throw new ScanError('The file is broken: it has no JSON');
  return { json, binary };
};

/** Extensions that change what is read; others only add what is not used here. */
const known = new Set([
  'KHR_draco_mesh_compression',
  'EXT_meshopt_compression',
  'KHR_meshopt_compression',
  'KHR_mesh_quantization',
  'KHR_texture_transform',
  'KHR_materials_unlit',
  'KHR_materials_pbrSpecularGlossiness',
  'EXT_mesh_gpu_instancing',
  'EXT_texture_webp',
  'EXT_texture_avif',
  'KHR_lights_punctual',
]);
const onlyLooks = /^KHR_(materials|texture|lights|xmp)/;

const checkExtensions = (json: JsonField): void => {
  const missing = json
    .get('extensionsRequired')
    .items()
    .map((field) => field.text().slice(0, 60))
    .filter((name) => !known.has(name) && !onlyLooks.test(name));
  if (missing.length > 0)
    throw new ScanError(`It needs ${missing.slice(0, 3).join(', ')}, which is not read here; export it without`);
};

const checkVersion = (json: JsonField): void => {
  const asset = json.get('asset');
  const version = asset.get('minVersion').text(asset.get('version').text());
  if (!version) throw new ScanError('The file is broken: its JSON is no glTF');
  if (!version.startsWith('2.')) throw new ScanError(`It is glTF ${version.slice(0, 10)}; version 2.0 is read`);
};

const baseName = (uri: string): string => {
  const name = uri.split(/[/\\]/).at(-1) ?? '';
  return name.length > 40 ? `${name.slice(0, 39)}…` : name;
};

/** Refuses a file that needs others: they were not opened with it, and nothing is fetched. */
const checkAlone = (json: JsonField): void => {
  const uris = [...json.get('buffers').items(), ...json.get('images').items()]
    .map((field) => field.get('uri').text())
    .filter((uri) => uri !== '' && !/^data:/i.test(uri));
  if (uris.length === 0) return;
  const names = [...new Set(uris.map(baseName))];
  const listed = `${names.slice(0, 4).join(', ')}${names.length > 4 ? ` and ${names.length - 4} more` : ''}`;
  throw new ScanError(`It needs other files (${listed}); save it as one .glb`);
};

/**
 * Opens a GLB or a glTF text and checks that it stands alone and can be read.
 *
 * @throws ScanError otherwise
 */
export const openGltf = (bytes: Uint8Array): GltfFile => {
  const isBinary = bytes[0] === 0x67 && bytes[1] === 0x6c;
  const file = isBinary ? readChunks(bytes) : { json: parseJson(bytes), binary: null };
  checkVersion(file.json);
  checkExtensions(file.json);
  checkAlone(file.json);
  return file;
};
