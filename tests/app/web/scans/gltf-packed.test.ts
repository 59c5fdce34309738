import { EXTMeshoptCompression, KHRDracoMeshCompression, KHRMeshQuantization } from '@gltf-transform/extensions';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { accessor, groundDocument } from './made-documents.ts';
import { apart, measureMesh } from './measure.ts';
import { nodeTools } from './node-tools.ts';
import { loadedByThree, measuredByThree, measuredByTransform, transformIO } from './oracles.ts';

const read = (bytes: Uint8Array) => readScan('made.glb', bytes, nodeTools);

describe('GLB files that glTF Transform packed', () => {
  it.each([
    ['EDGEBREAKER', 14],
    ['SEQUENTIAL', 12],
  ] as const)(
    'by Draco’s %s with %i bits are within a step of what was packed, and as glTF Transform unpacks them',
    async (method, bits) => {
      const io = await transformIO();
      const { document } = groundDocument(40, 21, true);
      const before = measuredByTransform(document);
      document
        .createExtension(KHRDracoMeshCompression)
        .setRequired(true)
        .setEncoderOptions({
          method: KHRDracoMeshCompression.EncoderMethod[method],
          quantizationBits: { POSITION: bits, COLOR: 10 },
        });
      const bytes = await io.writeBinary(document);
      expect(new TextDecoder().decode(bytes.subarray(0, 2000))).toContain('KHR_draco_mesh_compression');
      const scan = await read(bytes);
      const ours = measureMesh(scan);
      expect(ours.triangles).toBe(3200);
      expect(apart(before, ours)).toBeLessThan(2 / 2 ** bits);
      expect(apart(measuredByTransform(await io.readBinary(bytes)), ours)).toBeLessThan(1e-6);
      expect(scan.colours).not.toBeNull();
    },
  );

  it.each([false, true])(
    'by Draco with light at the corners in bytes: 51 of 255 is one fifth, whether or not the packed mesh calls bytes normalized too (%s)',
    async (flagsBytes) => {
      const { document, primitive, ground } = groundDocument(4, 24);
      const bytes = new Uint8Array(ground.positions.length).fill(51);
      primitive.setAttribute('COLOR_0', accessor(document, 'VEC3', bytes).setNormalized(true));
      document.createExtension(KHRDracoMeshCompression).setRequired(true);
      const { colours } = await read(await (await transformIO({ flagsBytes })).writeBinary(document));
      // IEC 61966-2-1 of light 0.2: 255 * (1.055 * 0.2 ** (1 / 2.4) - 0.055) = 123.55
      expect([...new Set(colours)]).toEqual([124]);
    },
  );

  it.each(['QUANTIZE', 'FILTER'] as const)(
    'by meshopt’s %s are as glTF Transform and three unpack them',
    async (method) => {
      const io = await transformIO();
      const { document } = groundDocument(40, 22);
      document
        .createExtension(EXTMeshoptCompression)
        .setRequired(true)
        .setEncoderOptions({ method: EXTMeshoptCompression.EncoderMethod[method] });
      const bytes = await io.writeBinary(document);
      expect(new TextDecoder().decode(bytes.subarray(0, 3000))).toContain('EXT_meshopt_compression');
      const ours = measureMesh(await read(bytes));
      expect(ours.triangles).toBe(3200);
      expect(apart(measuredByTransform(await io.readBinary(bytes)), ours)).toBeLessThan(1e-6);
      expect(apart(measuredByThree(await loadedByThree(bytes)), ours)).toBeLessThan(1e-6);
    },
  );

  it('with 16-bit normalized corners (KHR_mesh_quantization) are as three reads them', async () => {
    const { document, ground, primitive, node } = groundDocument(20, 23);
    document.createExtension(KHRMeshQuantization).setRequired(true);
    const steps = Int16Array.from(ground.positions, (value) => Math.round((value / 5) * 32767));
    primitive.setAttribute('POSITION', accessor(document, 'VEC3', steps).setNormalized(true));
    node.setScale([5, 5, 5]);
    const bytes = await (await transformIO()).writeBinary(document);
    const ours = measureMesh(await read(bytes));
    expect(ours.triangles).toBe(800);
    expect(apart(measuredByThree(await loadedByThree(bytes)), ours)).toBeLessThan(1e-6);
    expect(ours.high[0]).toBeCloseTo(5, 3);
  });
});
