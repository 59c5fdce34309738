import { kindOfFile } from './kind-of-file.ts';
import { counted, maxFileBytes, maxKeptTriangles } from './limits.ts';
import { tidyMesh } from './mesh/tidy-mesh.ts';
import { ScanError } from './scan-error.ts';
import type { ScanTools } from './scan-tools.ts';
import type { RawMesh, ScanKind, ScannedMesh } from './scanned-mesh.ts';

/** Each kind's reader is loaded when a file of it is opened. */
const readRaw = async (kind: ScanKind, bytes: Uint8Array, tools: ScanTools, leftOut: string[]): Promise<RawMesh> => {
  switch (kind) {
    case 'gltf':
      return (await import('./gltf/read-gltf.ts')).readGltf(bytes, tools, leftOut);
    case 'obj':
      return (await import('./obj/read-obj.ts')).readObj(bytes, leftOut);
    case 'ply':
      return (await import('./ply/read-ply.ts')).readPly(bytes, leftOut);
  }
};

/** What readers throw that is not a ScanError: no memory, or a fault of ours. */
const asScanError = (error: unknown): ScanError => {
  if (error instanceof ScanError) return error;
  const isMemory = error instanceof RangeError && /alloc|length|memory/i.test(error.message);
  return new ScanError(isMemory ? 'There is not enough memory to read it' : 'The file is broken and can’t be read');
};

/**
 * Reads a scan: GLB, glTF 2.0 text, OBJ or PLY, told apart by content. Nothing is fetched.
 *
 * @param bytes the whole file
 * @returns a sound mesh of at most 300,000 triangles
 * @throws ScanError with a sentence for the screen; nothing else
 */
export const readScan = async (fileName: string, bytes: Uint8Array, tools: ScanTools): Promise<ScannedMesh> => {
  try {
    if (bytes.length > maxFileBytes)
      throw new ScanError(`It has ${(bytes.length / 1e6).toFixed(0)} MB; at most ${maxFileBytes / 1e6} MB are read`);
    const kind = kindOfFile(fileName, bytes);
    const leftOut: string[] = [];
    tools.onProgress?.('Reading the file');
    const raw = await readRaw(kind, bytes, tools, leftOut);
    tools.onProgress?.(`Joining ${counted(raw.indices.length / 3, 'triangle')}`);
    const tidy = tidyMesh(raw, leftOut);
    if (tidy.indices.length <= maxKeptTriangles * 3) return { ...tidy, kind, leftOut };
    tools.onProgress?.(`Thinning ${counted(tidy.indices.length / 3, 'triangle')}`);
    const { thinMesh } = await import('./mesh/thin-mesh.ts');
    const thinned = tidyMesh(await thinMesh(tidy, maxKeptTriangles, leftOut), leftOut);
    return { ...thinned, kind, leftOut };
  } catch (error) {
    throw asScanError(error);
  }
};
