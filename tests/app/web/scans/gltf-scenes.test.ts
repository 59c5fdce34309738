import { EXTMeshGPUInstancing } from '@gltf-transform/extensions';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { accessor, groundDocument, lumpyGround } from './made-documents.ts';
import { apart, measureMesh } from './measure.ts';
import { nodeTools } from './node-tools.ts';
import { loadedByThree, measuredByThree, measuredByTransform, transformIO } from './oracles.ts';

const read = (bytes: Uint8Array) => readScan('made.glb', bytes, nodeTools);
const half = Math.SQRT1_2;

describe('scenes of GLB files', () => {
  it('put meshes where nested nodes turn, scale and mirror them, as glTF Transform and three do', async () => {
    const { document, mesh, node, scene } = groundDocument(12, 31);
    const inner = document.createNode().setMesh(mesh).setTranslation([3, -1, 2]).setRotation([0, half, 0, half]);
    const mirrored = document.createNode().setMesh(mesh).setScale([-2, 0.5, 1]).setRotation([half, 0, 0, half]);
    node.setTranslation([0, 4, 0]).setScale([1, 3, 1]).addChild(inner.addChild(mirrored));
    scene.addChild(document.createNode().setMesh(mesh).setTranslation([-9, 0, 0]));
    const bytes = await (await transformIO()).writeBinary(document);
    const ours = measureMesh(await read(bytes));
    expect(ours.triangles).toBe(4 * 288);
    const theirs = measuredByTransform(document);
    const { volume: _, ...rest } = theirs;
    // glTF Transform leaves mirrored triangles turning the other way; three turns them while it draws
    expect(apart({ ...rest, volume: ours.volume }, ours)).toBeLessThan(1e-6);
    expect(apart({ ...measuredByThree(await loadedByThree(bytes)), volume: ours.volume }, ours)).toBeLessThan(1e-6);
  });

  it('keep a mirrored closed body facing outward: its volume stays positive', async () => {
    const { document, primitive, node } = groundDocument(1, 32);
    // a tetrahedron: corners at the origin and on the axes, volume 1/6
    primitive
      .setAttribute('POSITION', accessor(document, 'VEC3', Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 1)))
      .setAttribute('TEXCOORD_0', null)
      .setIndices(accessor(document, 'SCALAR', Uint16Array.of(0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3)));
    const io = await transformIO();
    for (const [scale, volume] of [
      [[1, 1, 1], 1 / 6],
      [[-2, 1, 1], 1 / 3],
      [[-1, -1, 1], 1 / 6],
      [[-1, -1, -1], 1 / 6],
    ] as const) {
      node.setScale([...scale]);
      expect(measureMesh(await read(await io.writeBinary(document))).volume).toBeCloseTo(volume, 6);
    }
  });

  it.each([
    ['strip', 5],
    ['fan', 6],
  ] as const)('read a %s, with indices and without, as three does', async (_, mode) => {
    const { document, primitive } = groundDocument(1, 33);
    const { positions } = lumpyGround(5, 34);
    const rim = positions.slice(0, 12 * 3);
    primitive
      .setMode(mode)
      .setAttribute('POSITION', accessor(document, 'VEC3', rim))
      .setAttribute('TEXCOORD_0', null);
    const io = await transformIO();
    for (const indices of [null, accessor(document, 'SCALAR', Uint16Array.of(0, 6, 1, 7, 2, 8, 3, 9, 4, 10))]) {
      primitive.setIndices(indices);
      const bytes = await io.writeBinary(document);
      const ours = measureMesh(await read(bytes));
      const theirs = measuredByThree(await loadedByThree(bytes));
      expect(ours.triangles).toBe(theirs.triangles);
      expect(apart(theirs, ours)).toBeLessThan(1e-6);
    }
  });

  it('read triangles without indices, and sparse corners, as glTF Transform does', async () => {
    const { document, ground, primitive } = groundDocument(6, 35);
    const soup = Float32Array.from(
      [...ground.indices].flatMap((i) => [...ground.positions.subarray(i * 3, i * 3 + 3)]),
    );
    primitive.setIndices(null).setAttribute('TEXCOORD_0', null);
    primitive.setAttribute('POSITION', accessor(document, 'VEC3', soup));
    const io = await transformIO();
    const scan = await read(await io.writeBinary(document));
    expect(scan.indices.length / 3).toBe(72);
    expect(scan.positions.length / 3).toBe(49);
    // two triangles of which only some corners are written, the others lie at the origin
    const few = new Float32Array(18);
    few.set([1, 0, 0, 0, 1, 0], 3);
    few.set([2, 0, 0, 0, 2, 1], 12);
    primitive.setAttribute('POSITION', accessor(document, 'VEC3', few).setSparse(true));
    const bytes = await io.writeBinary(document);
    expect(new TextDecoder().decode(bytes.subarray(0, 1500))).toContain('"sparse"');
    expect(apart(measuredByTransform(await io.readBinary(bytes)), measureMesh(await read(bytes)))).toBeLessThan(1e-6);
  });

  it('make every copy of EXT_mesh_gpu_instancing: as nodes with the same moves, turns and scales do', async () => {
    const moves = Float32Array.of(0, 0, 0, 5, 1, 0, -3, 0, 7);
    const turns = Float32Array.of(0, 0, 0, 1, 0, half, 0, half, half, 0, 0, half);
    const scales = Float32Array.of(1, 1, 1, 2, 2, 2, 1, 0.5, 1);
    const io = await transformIO();
    const copied = groundDocument(5, 36);
    const extension = copied.document.createExtension(EXTMeshGPUInstancing).setRequired(true);
    copied.node.setTranslation([1, 2, 3]).setExtension(
      'EXT_mesh_gpu_instancing',
      extension
        .createInstancedMesh()
        .setAttribute('TRANSLATION', accessor(copied.document, 'VEC3', moves))
        .setAttribute('ROTATION', accessor(copied.document, 'VEC4', turns))
        .setAttribute('SCALE', accessor(copied.document, 'VEC3', scales)),
    );
    const plain = groundDocument(5, 36);
    plain.node.setMesh(null).setTranslation([1, 2, 3]);
    for (let i = 0; i < 3; i++)
      plain.node.addChild(
        plain.document
          .createNode()
          .setMesh(plain.mesh)
          .setTranslation([...moves.subarray(i * 3, i * 3 + 3)] as [number, number, number])
          .setRotation([...turns.subarray(i * 4, i * 4 + 4)] as [number, number, number, number])
          .setScale([...scales.subarray(i * 3, i * 3 + 3)] as [number, number, number]),
      );
    const ours = measureMesh(await read(await io.writeBinary(copied.document)));
    expect(ours.triangles).toBe(150);
    expect(apart(measuredByTransform(plain.document), ours)).toBeLessThan(1e-6);
  });

  it('hold a skin as its joints rest, not as it was bound: as three’s SkinnedMesh (1e-6 of its size)', async () => {
    const { document, ground, primitive, node, scene } = groundDocument(8, 37);
    const count = ground.positions.length / 3;
    const weights = Float32Array.from({ length: count * 4 }, (_, i) => {
      const share = Math.floor(i / 4) / count;
      return [share, 1 - share, 0, 0][i % 4] ?? 0;
    });
    const joints = Uint8Array.from({ length: count * 4 }, (_, i) => (i % 4 === 1 ? 1 : 0));
    primitive
      .setAttribute('JOINTS_0', accessor(document, 'VEC4', joints))
      .setAttribute('WEIGHTS_0', accessor(document, 'VEC4', weights));
    const bones = [
      document.createNode().setTranslation([0, 2, 0]).setRotation([0, half, 0, half]),
      document.createNode().setTranslation([4, 0, 0]).setScale([1, 2, 1]),
    ];
    const inverse = Float32Array.of(
      ...[1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1],
      ...[1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, -4, 0, 0, 1],
    );
    const skin = document.createSkin().setInverseBindMatrices(accessor(document, 'MAT4', inverse));
    for (const bone of bones) {
      skin.addJoint(bone);
      scene.addChild(bone);
    }
    // a skinned mesh's own node plays no part (glTF 2.0, section 3.7.3.3)
    node.setSkin(skin).setTranslation([50, 0, 0]);
    const bytes = await (await transformIO()).writeBinary(document);
    const ours = measureMesh(await read(bytes));
    expect(apart(measuredByThree(await loadedByThree(bytes)), ours)).toBeLessThan(1e-6);
    expect(ours.high[0]).toBeLessThan(20);
  });
});
