import { type Document, NodeIO } from '@gltf-transform/core';
import { ALL_EXTENSIONS } from '@gltf-transform/extensions';
import draco3d from 'draco3dgltf';
import { MeshoptDecoder, MeshoptEncoder } from 'meshoptimizer';
import { BufferGeometry, Matrix4, Mesh, type Object3D, SkinnedMesh, Vector3 } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { type Measures, measureTriangles } from './measure.ts';

type Corner = readonly [number, number, number];

/** What of Draco's encoder is changed here. */
interface Encoder {
  readonly MeshBuilder: { readonly prototype: Builder };
}
interface Builder {
  AddUInt8Attribute(mesh: object, type: number, count: number, width: number, values: Uint8Array): number;
  SetNormalizedFlagForAttribute(mesh: object, id: number, isNormalized: boolean): boolean;
}

/** Draco's encoder that calls bytes normalized in the packed mesh too, as files of other exporters do. */
const flaggingEncoder = async (): Promise<unknown> => {
  const encoder = (await draco3d.createEncoderModule()) as Encoder;
  const { prototype } = encoder.MeshBuilder;
  const add = prototype.AddUInt8Attribute;
  prototype.AddUInt8Attribute = function (this: Builder, mesh, ...rest) {
    const id = add.call(this, mesh, ...rest);
    if (!this.SetNormalizedFlagForAttribute(mesh, id, true)) throw new Error('not flagged');
    return id;
  };
  return encoder;
};

/** glTF Transform with all that it reads and writes. */
export const transformIO = async ({ flagsBytes = false } = {}): Promise<NodeIO> => {
  await Promise.all([MeshoptDecoder.ready, MeshoptEncoder.ready]);
  return new NodeIO().registerExtensions(ALL_EXTENSIONS).registerDependencies({
    'draco3d.decoder': await draco3d.createDecoderModule(),
    'draco3d.encoder': flagsBytes ? await flaggingEncoder() : await draco3d.createEncoderModule(),
    'meshopt.decoder': MeshoptDecoder,
    'meshopt.encoder': MeshoptEncoder,
  });
};

/** A model as glTF Transform reads it: plain triangles of all nodes of the default scene. Skins and copies play no part. */
export const measuredByTransform = (document: Document): Measures => {
  const found: (readonly [Corner, Corner, Corner])[] = [];
  const scene = document.getRoot().getDefaultScene() ?? document.getRoot().listScenes()[0];
  scene?.traverse((node) => {
    const matrix = new Matrix4().fromArray(node.getWorldMatrix());
    for (const primitive of node.getMesh()?.listPrimitives() ?? []) {
      if (primitive.getMode() !== 4) continue;
      const [positions, indices] = [primitive.getAttribute('POSITION'), primitive.getIndices()];
      const place = (i: number) =>
        new Vector3(...(positions?.getElement(indices?.getScalar(i) ?? i, []) ?? [])).applyMatrix4(matrix).toArray();
      const count = indices?.getCount() ?? positions?.getCount() ?? 0;
      for (let i = 0; i + 2 < count; i += 3) found.push([place(i), place(i + 1), place(i + 2)]);
    }
  });
  return measureTriangles(found);
};

/** Triangles of three's objects where they stand, skins as their bones hold them. */
export const measuredByThree = (object: Object3D): Measures => {
  object.updateMatrixWorld(true);
  const found: (readonly [Corner, Corner, Corner])[] = [];
  object.traverse((child) => {
    if (!(child instanceof Mesh) || !(child.geometry instanceof BufferGeometry)) return;
    if (child instanceof SkinnedMesh) child.skeleton.update();
    const index = child.geometry.getIndex();
    const count = index?.count ?? child.geometry.getAttribute('position').count;
    const place = (i: number): Corner =>
      child
        .getVertexPosition(index?.getX(i) ?? i, new Vector3())
        .applyMatrix4(child.matrixWorld)
        .toArray();
    for (let i = 0; i + 2 < count; i += 3) found.push([place(i), place(i + 1), place(i + 2)]);
  });
  return measureTriangles(found);
};

/** A GLB without pictures and Draco as three's own loader reads it. */
export const loadedByThree = async (bytes: Uint8Array): Promise<Object3D> => {
  const scope = globalThis as { self?: unknown };
  scope.self ??= globalThis;
  const buffer = bytes.slice().buffer;
  const loader = new GLTFLoader().setMeshoptDecoder(MeshoptDecoder);
  return (await loader.parseAsync(buffer, '')).scene;
};
