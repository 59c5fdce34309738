import { counted } from '../limits.ts';
import { ScanError } from '../scan-error.ts';
import type { ScanTools } from '../scan-tools.ts';
import type { RawMesh } from '../scanned-mesh.ts';
import { checkPictures, colourPrimitives } from './colour-primitives.ts';
import { GltfBytes } from './gltf-bytes.ts';
import { openGltf } from './gltf-file.ts';
import type { JsonField } from './json-field.ts';
import { isMirroring, placePoints } from './matrix.ts';
import { type Primitive, PrimitiveReader } from './primitives.ts';
import { checkTriangleCount, type PlacedMesh, placedMeshes } from './scene-nodes.ts';
import { jointMatrices, skinnedPositions } from './skin.ts';

/** Sentences about what of a file plays no part. */
const sayWhatIsLeftOut = (json: JsonField, leftOut: string[]): void => {
  const count = (key: string) => json.get(key).items().length;
  if (count('animations') > 0)
    leftOut.push(`${counted(count('animations'), 'animation')} left out; the model stands as it does at rest`);
  const primitives = json
    .get('meshes')
    .items()
    .flatMap((mesh) => mesh.get('primitives').items());
  if (primitives.some((primitive) => primitive.get('targets').isThere)) leftOut.push('Shapes that morph left out');
  if (primitives.some((primitive) => primitive.get('mode').whole(6, 4) < 4)) leftOut.push('Points and lines left out');
  if (count('scenes') > 1) leftOut.push(`Of ${count('scenes')} scenes only the one that is shown first was read`);
};

/** Triangle primitives of a mesh, by their fields. */
const trianglePrimitives = (json: JsonField, mesh: number): JsonField[] =>
  json
    .get('meshes')
    .entry(mesh)
    .get('primitives')
    .items()
    .filter((primitive) => primitive.get('mode').whole(6, 4) >= 4);

/** What stands in the scene, joined. */
const join = (
  placed: readonly PlacedMesh[],
  primitivesOf: (mesh: number) => readonly { primitive: Primitive; colours: Uint8Array | null }[],
  positionsOf: (primitive: Primitive, at: PlacedMesh) => Float64Array,
): RawMesh => {
  const parts = placed.flatMap((at) => primitivesOf(at.mesh).map((part) => ({ ...part, at })));
  const cornerCount = parts.reduce((sum, { primitive }) => sum + primitive.positions.length / 3, 0);
  const indexCount = parts.reduce((sum, { primitive }) => sum + primitive.indices.length, 0);
  checkTriangleCount(indexCount / 3);
  const positions = new Float64Array(cornerCount * 3);
  const indices = new Uint32Array(indexCount);
  const colours = parts.some((part) => part.colours) ? new Uint8Array(indexCount).fill(255) : null;
  let [corner, index] = [0, 0];
  for (const { primitive, colours: own, at } of parts) {
    positions.set(positionsOf(primitive, at), corner * 3);
    const [second, third] = at.skin < 0 && isMirroring(at.sceneFromMesh) ? [2, 1] : [1, 2];
    for (let t = 0; t < primitive.indices.length; t += 3) {
      indices[index + t] = (primitive.indices[t] as number) + corner;
      indices[index + t + 1] = (primitive.indices[t + second] as number) + corner;
      indices[index + t + 2] = (primitive.indices[t + third] as number) + corner;
    }
    if (own) colours?.set(own, index);
    corner += primitive.positions.length / 3;
    index += primitive.indices.length;
  }
  return { positions, indices, colours };
};

/**
 * Reads a GLB or glTF 2.0 text: the meshes of its shown scene where its nodes put them, each triangle with a colour from
 * materials, corners and pictures.
 *
 * @param leftOut takes sentences about what was not read
 * @throws ScanError when it can't be read
 */
export const readGltf = async (bytes: Uint8Array, tools: ScanTools, leftOut: string[]): Promise<RawMesh> => {
  const file = openGltf(bytes);
  const { json } = file;
  checkPictures(json);
  const gltfBytes = await GltfBytes.of(file);
  const reader = await PrimitiveReader.of(json, gltfBytes, tools);
  const { placed, nodes } = placedMeshes(json, reader.accessors);
  const used = [...new Set(placed.map(({ mesh }) => mesh))];
  const countOf = new Map(
    used.map((mesh) => [
      mesh,
      trianglePrimitives(json, mesh).reduce((sum, primitive) => sum + reader.countTriangles(primitive), 0),
    ]),
  );
  const count = placed.reduce((sum, { mesh }) => sum + (countOf.get(mesh) ?? 0), 0);
  checkTriangleCount(count);
  sayWhatIsLeftOut(json, leftOut);
  if (count === 0)
    throw new ScanError(
      json.get('meshes').items().length === 0 || placed.length === 0
        ? 'Its scene holds no mesh'
        : 'It holds points or lines only, no faces; export it as a mesh',
    );
  tools.onProgress?.('Unpacking triangles');
  const primitives = used.flatMap((mesh) =>
    trianglePrimitives(json, mesh).map((field) => ({ mesh, primitive: reader.read(field) })),
  );
  const list = primitives.map(({ primitive }) => primitive);
  const colours = await colourPrimitives(json, list, gltfBytes, tools, leftOut);
  const byMesh = new Map<number, { primitive: Primitive; colours: Uint8Array | null }[]>();
  primitives.forEach(({ mesh, primitive }, i) => {
    byMesh.set(mesh, [...(byMesh.get(mesh) ?? []), { primitive, colours: colours?.[i] ?? null }]);
  });
  return join(
    placed,
    (mesh) => byMesh.get(mesh) ?? [],
    (primitive, { skin, sceneFromMesh }) => {
      if (skin >= 0)
        return skinnedPositions(primitive, jointMatrices(json.get('skins').entry(skin), nodes, reader.accessors));
      const positions = new Float64Array(primitive.positions.length);
      placePoints(sceneFromMesh, primitive.positions, positions, 0);
      return positions;
    },
  );
};
