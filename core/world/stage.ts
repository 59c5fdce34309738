import type { Triple } from '../colour/matrix.ts';
import type { Mesh } from '../geometry/mesh.ts';
import { buildRayTree, type RayTree } from '../geometry/ray-tree.ts';
import { weldCorners } from '../geometry/weld.ts';
import type { Finish, Ground, Setup, Subject } from '../setup/schema/setup.ts';
import { groundMesh, reliefMeshes } from './ground-mesh.ts';
import { partMesh } from './part-mesh.ts';

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
  /** Index into `reflectances`, in leaf order. */
  readonly finishOfTriangle: Uint16Array;
  /** Index into `subjects`, or -1 for the ground and what is strewn on it, in leaf order. */
  readonly subjectOfTriangle: Int16Array;
  /** 1 where the triangle bounds something solid, 0 on planes and the ground, in leaf order. */
  readonly isSolidTriangle: Uint8Array;
  /** Linear RGB reflectance. */
  readonly reflectances: readonly Triple[];
  readonly subjects: readonly StageSubject[];
}

const reflectanceOf = ({ reflectance }: Finish): Triple =>
  typeof reflectance === 'number' ? [reflectance, reflectance, reflectance] : reflectance;

/** Meshes with what they belong to, joined into one soup. */
class Soup {
  readonly meshes: { mesh: Mesh; finish: number; subject: number; isSolid: boolean }[] = [];
  readonly reflectances: Triple[] = [];
  private readonly known = new Map<string, number>();

  add(mesh: Mesh, finish: Finish, subject: number, isSolid: boolean): void {
    const reflectance = reflectanceOf(finish);
    const key = reflectance.join();
    let index = this.known.get(key);
    if (index === undefined) {
      index = this.reflectances.push(reflectance) - 1;
      this.known.set(key, index);
    }
    this.meshes.push({ mesh, finish: index, subject, isSolid });
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

/** Builds the stage of a ground and its subjects. */
export const buildStage = (ground: Ground, subjects: readonly Subject[]): Stage => {
  const soup = new Soup();
  soup.add(groundMesh(), ground.finish, -1, false);
  for (const relief of ground.relief) for (const mesh of reliefMeshes(relief)) soup.add(mesh, ground.finish, -1, false);
  const stageSubjects = subjects.map((subject, s): StageSubject => {
    const meshes = subject.parts.map((part) => partMesh(subject, part));
    meshes.forEach((mesh, p) => {
      soup.add(mesh, subject.parts[p]?.finish ?? subject.finish, s, subject.parts[p]?.kind !== 'plane');
    });
    const points = distinctPoints(meshes);
    const topMetres = points.reduce((top, v, i) => (i % 3 === 1 ? Math.max(top, v) : top), Number.NEGATIVE_INFINITY);
    return { id: subject.id, name: subject.name, topMetres, points };
  });
  return { ...layOut(soup), reflectances: soup.reflectances, subjects: stageSubjects, key: `stage-${++stageCount}` };
};

/** Builds the tree and puts all that belongs to a triangle in the tree's order. */
const layOut = ({ meshes }: Soup) => {
  const count = meshes.reduce((sum, { mesh }) => sum + mesh.positions.length / 9, 0);
  const positions = new Float64Array(count * 9);
  const normals = new Float64Array(count * 9);
  const finish = new Uint16Array(count);
  const subject = new Int16Array(count);
  const isSolid = new Uint8Array(count);
  let at = 0;
  for (const entry of meshes) {
    const triangles = entry.mesh.positions.length / 9;
    positions.set(entry.mesh.positions, at * 9);
    normals.set(entry.mesh.normals, at * 9);
    finish.fill(entry.finish, at, at + triangles);
    subject.fill(entry.subject, at, at + triangles);
    isSolid.fill(entry.isSolid ? 1 : 0, at, at + triangles);
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
    finishOfTriangle: Uint16Array.from(tree.sourceTriangle, (source) => finish[source] as number),
    subjectOfTriangle: Int16Array.from(tree.sourceTriangle, (source) => subject[source] as number),
    isSolidTriangle: Uint8Array.from(tree.sourceTriangle, (source) => isSolid[source] as number),
  };
};

/** Stages that were asked for lately; few, because one of a million triangles takes a hundred megabytes. */
const recent: { subjects: readonly Subject[]; ground: Ground; stage: Stage }[] = [];
const mostRecent = 3;

/** The stage of a setup; setups that share their subjects and ground (as edits of lamps do) share the stage. */
export const stageOf = ({ subjects, ground }: Setup): Stage => {
  const at = recent.findIndex((entry) => entry.subjects === subjects && entry.ground === ground);
  const entry =
    at < 0 ? { subjects, ground, stage: buildStage(ground, subjects) } : (recent[at] as (typeof recent)[number]);
  if (at >= 0) recent.splice(at, 1);
  recent.unshift(entry);
  recent.length = Math.min(recent.length, mostRecent);
  return entry.stage;
};
