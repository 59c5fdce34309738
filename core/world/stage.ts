import type { Mesh } from '../geometry/mesh.ts';
import { buildRayTree, type RayTree } from '../geometry/ray-tree.ts';
import { weldCorners } from '../geometry/weld.ts';
import type { Finish, Ground, Scan, Setup, Subject } from '../setup/schema/setup.ts';
import { groundMesh, reliefMeshes } from './ground-mesh.ts';
import { partMesh, tintsOfPart } from './part-mesh.ts';
import { type StageFinish, stageFinishOf } from './stage-finish.ts';

/** A subject as the stage knows it. */
export interface StageSubject {
  readonly id: string;
  readonly name: string;
  /** Highest point, metres over the ground. */
  readonly topMetres: number;
  /** Its distinct corners in world axes, three numbers each, double precision. */
  readonly points: Float64Array;
}

/** Everything that light can meet: triangles with finishes under one tree. Lamps and camera are not part of it. */
export interface Stage {
  /** Differs between any two stages of a session; layers traced on one stage are not used on another. */
  readonly key: string;
  readonly tree: RayTree;
  /** Corner normals in leaf order, nine numbers a triangle. */
  readonly normals: Float32Array;
  /** Index into `finishes`, in leaf order. */
  readonly finishOfTriangle: Uint16Array;
  /** What the finish's reflectance is multiplied with, linear RGB, three numbers a triangle in leaf order; null = nothing is tinted. */
  readonly tints: Float32Array | null;
  /** Index into `subjects`, or -1 for the ground and what is strewn on it, in leaf order. */
  readonly subjectOfTriangle: Int16Array;
  /** 1 where the triangle bounds something solid, 0 on planes and the ground, in leaf order. */
  readonly isSolidTriangle: Uint8Array;
  readonly finishes: readonly StageFinish[];
  /** Those that are not hidden. */
  readonly subjects: readonly StageSubject[];
}

/** Triangles, and what each is tinted with: three numbers a triangle, or null. */
interface TintedMesh {
  readonly mesh: Mesh;
  readonly tints: Float32Array | null;
}

/** Meshes with what they belong to, joined into one soup. */
class Soup {
  readonly meshes: (TintedMesh & { finish: number; subject: number; isSolid: boolean })[] = [];
  readonly finishes: StageFinish[] = [];
  private readonly known = new Map<string, number>();

  add(tinted: TintedMesh, finish: Finish, subject: number, isSolid: boolean): void {
    const key = JSON.stringify(finish);
    let index = this.known.get(key);
    if (index === undefined) {
      index = this.finishes.push(stageFinishOf(finish)) - 1;
      this.known.set(key, index);
    }
    this.meshes.push({ ...tinted, finish: index, subject, isSolid });
  }
}

const distinctPoints = (meshes: readonly Mesh[]): Float64Array => {
  const all = new Float64Array(meshes.reduce((sum, { positions }) => sum + positions.length, 0));
  let at = 0;
  for (const { positions } of meshes) {
    all.set(positions, at);
    at += positions.length;
  }
  const { firstCorner } = weldCorners(all, 1e-5);
  const points = new Float64Array(firstCorner.length * 3);
  firstCorner.forEach((corner, group) => {
    points.set(all.subarray(corner * 3, corner * 3 + 3), group * 3);
  });
  return points;
};

let stageCount = 0;

/** Builds the stage of a ground and those subjects that are not hidden. */
export const buildStage = (ground: Ground, subjects: readonly Subject[], scans: readonly Scan[] = []): Stage => {
  const soup = new Soup();
  const onGround = (mesh: Mesh, finish: Finish) => soup.add({ mesh, tints: null }, finish, -1, false);
  onGround(groundMesh(), ground.finish);
  for (const relief of ground.relief)
    for (const mesh of reliefMeshes(relief)) onGround(mesh, relief.finish ?? ground.finish);
  const shown = subjects.filter(({ hidden }) => !hidden);
  const stageSubjects = shown.map((subject, s): StageSubject => {
    const meshes = subject.parts.map((part) => {
      const tinted = { mesh: partMesh(subject, part, scans), tints: tintsOfPart(part, scans) };
      soup.add(tinted, part.finish ?? subject.finish, s, part.kind !== 'plane');
      return tinted.mesh;
    });
    const points = distinctPoints(meshes);
    const topMetres = points.reduce((top, v, i) => (i % 3 === 1 ? Math.max(top, v) : top), Number.NEGATIVE_INFINITY);
    return { id: subject.id, name: subject.name, topMetres, points };
  });
  return { ...layOut(soup), finishes: soup.finishes, subjects: stageSubjects, key: `stage-${++stageCount}` };
};

const inLeafOrder = (triples: Float32Array, sourceTriangle: Uint32Array): Float32Array => {
  const sorted = new Float32Array(triples.length);
  sourceTriangle.forEach((source, t) => {
    sorted.set(triples.subarray(source * 3, source * 3 + 3), t * 3);
  });
  return sorted;
};

/** Builds the tree and puts all that belongs to a triangle in the tree's order. */
const layOut = ({ meshes }: Soup) => {
  const count = meshes.reduce((sum, { mesh }) => sum + mesh.positions.length / 9, 0);
  const positions = new Float64Array(count * 9);
  const normals = new Float64Array(count * 9);
  const finish = new Uint16Array(count);
  const subject = new Int16Array(count);
  const isSolid = new Uint8Array(count);
  const tints = meshes.some((entry) => entry.tints) ? new Float32Array(count * 3).fill(1) : null;
  let at = 0;
  for (const entry of meshes) {
    const triangles = entry.mesh.positions.length / 9;
    positions.set(entry.mesh.positions, at * 9);
    normals.set(entry.mesh.normals, at * 9);
    finish.fill(entry.finish, at, at + triangles);
    subject.fill(entry.subject, at, at + triangles);
    isSolid.fill(entry.isSolid ? 1 : 0, at, at + triangles);
    if (tints && entry.tints) tints.set(entry.tints, at * 3);
    at += triangles;
  }
  const tree = buildRayTree(positions);
  const sortedNormals = new Float32Array(count * 9);
  tree.sourceTriangle.forEach((source, t) => {
    sortedNormals.set(normals.subarray(source * 9, source * 9 + 9), t * 9);
  });
  return {
    tree,
    normals: sortedNormals,
    tints: tints && inLeafOrder(tints, tree.sourceTriangle),
    finishOfTriangle: Uint16Array.from(tree.sourceTriangle, (source) => finish[source] as number),
    subjectOfTriangle: Int16Array.from(tree.sourceTriangle, (source) => subject[source] as number),
    isSolidTriangle: Uint8Array.from(tree.sourceTriangle, (source) => isSolid[source] as number),
  };
};

/** Stages that were asked for lately; few, because one of a million triangles takes a hundred megabytes. */
const recent: { setup: Setup; stage: Stage }[] = [];
const mostRecent = 3;

/** The stage of a setup; setups that share subjects, ground and scans (as edits of lamps do) share the stage. */
export const stageOf = (setup: Setup): Stage => {
  const { subjects, ground, scans } = setup;
  const at = recent.findIndex(
    (entry) => entry.setup.subjects === subjects && entry.setup.ground === ground && entry.setup.scans === scans,
  );
  const entry = recent[at] ?? { setup, stage: buildStage(ground, subjects, scans) };
  if (at >= 0) recent.splice(at, 1);
  recent.unshift(entry);
  recent.length = Math.min(recent.length, mostRecent);
  return entry.stage;
};
