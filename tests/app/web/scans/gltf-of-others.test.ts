import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { apart, measureMesh } from './measure.ts';
import { nodeTools } from './node-tools.ts';
import { loadedByThree, measuredByThree, measuredByTransform, transformIO } from './oracles.ts';

const bytesOf = (name: string) => new Uint8Array(readFileSync(`tests/app/web/scans/fixtures/${name}`));

/** The JSON of a GLB, read here by hand: bytes 12 to 16 hold its length (glTF 2.0, section 4.4). */
const jsonOf = (bytes: Uint8Array) => {
  const length = new DataView(bytes.buffer, bytes.byteOffset).getUint32(12, true);
  return JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + length)));
};

describe('GLB files that others made (fixtures/SOURCES.md)', () => {
  it.each(['bunny.glb', 'head.glb'])(
    '%s, packed by Draco, is as glTF Transform reads it (1e-6 of its size)',
    async (name) => {
      const bytes = bytesOf(name);
      const scan = await readScan(name, bytes, nodeTools);
      const theirs = measuredByTransform(await (await transformIO()).readBinary(bytes));
      const ours = measureMesh(scan);
      expect(ours.triangles).toBe(theirs.triangles);
      expect(apart(theirs, ours)).toBeLessThan(1e-6);
      // as many triangles as the file says: a third of its indices; those without area are few
      const [primitive] = jsonOf(bytes).meshes[0].primitives;
      const said = jsonOf(bytes).accessors[primitive.indices].count / 3;
      expect(ours.triangles).toBeLessThanOrEqual(said);
      expect(ours.triangles).toBeGreaterThan(0.99 * said);
    },
  );

  it('hand.glb, which joints hold, is as three’s loader and SkinnedMesh have it (1e-6 of its size)', async () => {
    const bytes = bytesOf('hand.glb');
    const scan = await readScan('hand.glb', bytes, nodeTools);
    const theirs = measuredByThree(await loadedByThree(bytes));
    const ours = measureMesh(scan);
    expect(ours.triangles).toBe(theirs.triangles);
    expect(apart(theirs, ours)).toBeLessThan(1e-6);
  });
});
