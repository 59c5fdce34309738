import { inWords, maxReadTriangles } from '../limits.ts';
import { ScanError } from '../scan-error.ts';
import type { Accessors, Rows } from './accessors.ts';
import type { JsonField } from './json-field.ts';
import { compose, identity, type Matrix, multiply, nodeMatrix } from './matrix.ts';

/** A mesh where it stands in the scene. */
export interface PlacedMesh {
  /** Number of the mesh. */
  readonly mesh: number;
  readonly sceneFromMesh: Matrix;
  /** Number of the skin that moves it; -1 = none. */
  readonly skin: number;
}

/** Scenes of more nodes or copies are no scans. */
const mostPlaces = 100_000;

/** Placements of all nodes of the shown scene, by node. */
export type NodeMatrices = ReadonlyMap<number, Matrix>;

/** Nodes that begin the shown scene: those of the default scene, of the first one, or those that are no one's child. */
const roots = (json: JsonField): number[] => {
  const scenes = json.get('scenes');
  if (scenes.items().length > 0) {
    const scene = scenes.entry(json.get('scene').whole(undefined, 0));
    return scene
      .get('nodes')
      .items()
      .map((node) => node.whole());
  }
  const nodes = json.get('nodes').items();
  const children = new Set(
    nodes.flatMap((node) =>
      node
        .get('children')
        .items()
        .map((child) => child.value),
    ),
  );
  return nodes.map((_, i) => i).filter((i) => !children.has(i));
};

/** Placements of all nodes below the roots. A node that is its own ancestor is refused. */
const placeNodes = (json: JsonField): Map<number, Matrix> => {
  const placed = new Map<number, Matrix>();
  const open = roots(json).map((node) => ({ node, parent: identity }));
  for (let next = open.pop(); next; next = open.pop()) {
    const node = json.get('nodes').entry(next.node);
    if (placed.has(next.node)) node.refuse('stands in its scene twice');
    if (placed.size >= mostPlaces) throw new ScanError(`It has more than ${inWords(mostPlaces)} nodes`);
    const matrix = multiply(next.parent, nodeMatrix(node));
    placed.set(next.node, matrix);
    for (const child of node.get('children').items()) open.push({ node: child.whole(), parent: matrix });
  }
  return placed;
};

/** Placements of the copies of a node's mesh (EXT_mesh_gpu_instancing); one as the node stands, where it has none. */
const copies = (node: JsonField, accessors: Accessors): Matrix[] => {
  const attributes = node.get('extensions').get('EXT_mesh_gpu_instancing').get('attributes');
  if (!attributes.isThere) return [identity];
  const rows = (name: string, width: number): Rows | null =>
    attributes.get(name).isThere ? accessors.numbers(attributes.get(name).whole(), [width]) : null;
  const [moves, turns, scales] = [rows('TRANSLATION', 3), rows('ROTATION', 4), rows('SCALE', 3)];
  const count = Math.max(...[moves, turns, scales].map((list) => list?.count ?? 0));
  if (count > mostPlaces) throw new ScanError(`It has more than ${inWords(mostPlaces)} copies of a mesh`);
  const at = (list: Rows | null, i: number, otherwise: readonly number[]): ArrayLike<number> => {
    const { width } = { width: otherwise.length };
    const row = list?.values.subarray(i * width, (i + 1) * width);
    return row && row.length === width ? row : otherwise;
  };
  return Array.from({ length: count }, (_, i) =>
    compose(
      Array.from(at(moves, i, [0, 0, 0])),
      Array.from(at(turns, i, [0, 0, 0, 1])),
      Array.from(at(scales, i, [1, 1, 1])),
    ),
  );
};

/**
 * All meshes of the shown scene where they stand.
 *
 * @throws ScanError when the nodes are broken or too many
 */
export const placedMeshes = (json: JsonField, accessors: Accessors): { placed: PlacedMesh[]; nodes: NodeMatrices } => {
  const nodes = placeNodes(json);
  const placed: PlacedMesh[] = [];
  for (const [index, matrix] of nodes) {
    const node = json.get('nodes').entry(index);
    if (!node.get('mesh').isThere) continue;
    const skin = node.get('skin').isThere ? node.get('skin').whole() : -1;
    for (const copy of copies(node, accessors))
      placed.push({ mesh: node.get('mesh').whole(), sceneFromMesh: multiply(matrix, copy), skin });
    if (placed.length > mostPlaces) throw new ScanError(`It has more than ${inWords(mostPlaces)} meshes`);
  }
  return { placed, nodes };
};

/** Refuses more triangles than are read, before any is. */
export const checkTriangleCount = (count: number): void => {
  if (count > maxReadTriangles)
    throw new ScanError(`It has ${inWords(count)} triangles; at most ${inWords(maxReadTriangles)} are read`);
};
