import { ScanError } from './scan-error.ts';
import type { ScanKind } from './scanned-mesh.ts';

const startsWith = (bytes: Uint8Array, text: string): boolean =>
  [...text].every((letter, i) => bytes[i] === letter.charCodeAt(0));

/** Files that people try, and what to say of each. */
const others: readonly (readonly [(bytes: Uint8Array, ending: string) => boolean, string])[] = [
  [(_, ending) => ending === 'usdz', 'USDZ files are not read; export it as GLB'],
  [(bytes) => startsWith(bytes, 'PK'), 'It is a packed archive; unpack it and open the GLB, OBJ or PLY in it'],
  [(bytes) => startsWith(bytes, '\x1f\x8b'), 'It is a packed archive; unpack it and open the GLB, OBJ or PLY in it'],
  [(bytes, ending) => ending === 'fbx' || startsWith(bytes, 'Kaydara'), 'FBX files are not read; export it as GLB'],
  [(_, ending) => ending === 'stl', 'STL files are not read; export it as GLB, OBJ or PLY'],
  [(_, ending) => ['las', 'laz', 'e57', 'xyz', 'pts'].includes(ending), 'Clouds of points are not read; export a mesh'],
];

/** Lines that an OBJ file may begin with. */
const objLine = /^\s*(?:#|v\s|vt\s|vn\s|f\s|o\s|g\s|s\s|mtllib\s|usemtl\s)/;

/**
 * Tells what a file is by what it holds; its ending decides only where the content does not.
 *
 * @throws ScanError when it is none that is read
 */
export const kindOfFile = (fileName: string, bytes: Uint8Array): ScanKind => {
  const ending = /\.([^.]*)$/.exec(fileName.toLowerCase())?.[1] ?? '';
  if (bytes.length === 0) throw new ScanError('The file is empty');
  if (startsWith(bytes, 'glTF')) return 'gltf';
  if (startsWith(bytes, 'ply\n') || startsWith(bytes, 'ply\r')) return 'ply';
  for (const [is, words] of others) if (is(bytes, ending)) throw new ScanError(words);
  const start = new TextDecoder().decode(bytes.subarray(0, 2000)).replace(/^\ufeff/, '');
  if (start.trimStart().startsWith('{')) return 'gltf';
  if (objLine.test(start)) return 'obj';
  if (ending === 'obj') return 'obj';
  if (ending === 'glb' || ending === 'gltf' || ending === 'ply')
    throw new ScanError(`It is named .${ending}, but it does not begin as such a file does`);
  throw new ScanError('It is no GLB, glTF, OBJ or PLY file');
};
