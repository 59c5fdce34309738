import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { ScanError } from '../../../../app/web/scans/scan-error.ts';
import { groundDocument } from './made-documents.ts';
import { measureMesh } from './measure.ts';
import { nodeTools } from './node-tools.ts';
import { transformIO } from './oracles.ts';

type Json = Record<string, never> & { [key: string]: never };
const textOf = (value: unknown) => new TextEncoder().encode(JSON.stringify(value));
const reasonOf = async (bytes: Uint8Array, name = 'made.glb'): Promise<string> => {
  const error = await readScan(name, bytes, nodeTools).then(
    () => null,
    (thrown) => thrown,
  );
  expect(error).toBeInstanceOf(ScanError);
  return (error as ScanError).message;
};

/** The ground as glTF text with its data inside, changed. */
const groundText = async (change: (json: Json) => void, cells = 4) => {
  const { json, resources } = await (await transformIO()).writeJSON(groundDocument(cells, 51).document);
  const [name] = Object.keys(resources);
  const copy = structuredClone(json) as unknown as Json;
  const data = Buffer.from(resources[name ?? ''] ?? []).toString('base64');
  Object.assign(copy['buffers']?.[0] ?? {}, { uri: `data:application/octet-stream;base64,${data}` });
  change(copy);
  return textOf(copy);
};
const set = (json: Json, path: string, value: unknown) => {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const at = keys.reduce((node: Record<string, unknown>, key) => node[key] as Record<string, unknown>, json);
  if (value === undefined) delete at[last];
  else at[last] = value;
};

describe('glTF text', () => {
  it('is read where its data lies within', async () => {
    const scan = await readScan('made.gltf', await groundText(() => {}), nodeTools);
    expect(measureMesh(scan).triangles).toBe(32);
    expect(scan.kind).toBe('gltf');
  });

  it('that needs other files names them and says what to do', async () => {
    const bytes = await groundText((json) => {
      set(json, 'buffers.0.uri', 'folder/scan.bin');
      set(json, 'images', [{ uri: 'wall%201.jpg' }, { uri: 'https://example.org/a/floor.png' }]);
    });
    expect(await reasonOf(bytes)).toBe('It needs other files (scan.bin, wall%201.jpg, floor.png); save it as one .glb');
  });

  it.each([
    ['accessors.0.count', 4_000_000_000, 'accessors[0].count must be a whole number from 0 to 15000000'],
    ['accessors.0.count', 30_000, 'reaches beyond its data'],
    ['accessors.0.count', -1, 'must be a whole number'],
    ['accessors.0.componentType', 77, 'is no type of numbers'],
    ['bufferViews.0.byteLength', 1e9, 'reaches beyond the file'],
    ['bufferViews.0.buffer', 3, 'has no entry 3'],
    ['meshes.0.primitives.0.indices', 99, 'has no entry 99'],
    ['meshes.0.primitives.0.attributes', {}, 'no places of its corners'],
    ['nodes.0.children', [0], 'stands in its scene twice'],
    ['nodes.0.matrix', [1, 2, 3], 'must be 16 numbers'],
    ['meshes', 'none', 'must be a list'],
    ['scenes.0.nodes', [], 'Its scene holds no mesh'],
    ['asset', { version: '1.0' }, 'It is glTF 1.0; version 2.0 is read'],
    ['asset', undefined, 'no glTF'],
    ['extensionsRequired', ['EXT_from_tomorrow'], 'It needs EXT_from_tomorrow, which is not read here'],
    ['buffers.0.uri', 'data:;base64,@@@@', 'has broken data'],
    ['buffers.0.uri', undefined, 'points to data that is not in the file'],
  ])('with %s = %j says “%s”', async (path, value, words) => {
    expect(await reasonOf(await groundText((json) => set(json, path, value)))).toContain(words);
  });

  it('that makes 100,000 copies of a mesh of 128 triangles is refused before they are made', async () => {
    const bytes = await groundText((json) => {
      set(
        json,
        'nodes',
        Array.from({ length: 100_000 }, () => ({ mesh: 0 })),
      );
      set(
        json,
        'scenes.0.nodes',
        Array.from({ length: 100_000 }, (_, i) => i),
      );
    }, 8);
    expect(await reasonOf(bytes)).toBe('It has 12,800,000 triangles; at most 5,000,000 are read');
  });
});
