import type { Mesh } from '../geometry/mesh.ts';
import type { RayTree } from '../geometry/ray-tree.ts';
import type { Finish, Ground, Scan, Setup, Subject } from '../setup/schema/setup.ts';
import { type Air, airOf } from './air.ts';
import { groundMesh, reliefMesh } from './ground-mesh.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { type PlacedSubject, placeSubject, type StageSubject } from './placed-subject.ts';
import { Soup } from './soup.ts';
import type { StageFinish } from './stage-finish.ts';

export type { StageSubject };

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
  /** 1 where the triangle bounds something solid, 0 on planes, cloth and the ground, in leaf order. */
  readonly isSolidTriangle: Uint8Array;
  readonly finishes: readonly StageFinish[];
  /** Those that are not hidden. */
  readonly subjects: readonly StageSubject[];
  /** Haze between all this; null = clear. */
  readonly air: Air | null;
}

/** What a stage was made of, from which one that differs little can be had quickly. */
interface Making {
  readonly placed: ReadonlyMap<Subject, PlacedSubject>;
  readonly scans: readonly Scan[];
  readonly laidOut: LaidOut;
}

const makings = new WeakMap<Stage, Making>();
const bareGround = groundMesh();
const noScans: readonly Scan[] = [];
let stageCount = 0;

/**
 * Builds the stage of a ground and those subjects that are not hidden.
 *
 * @param before a stage that may differ little: subjects that are the same objects are not placed again, and where things
 *   only moved its tree is refitted. What light meets is the same with it and without.
 */
export const buildStage = (
  ground: Ground,
  subjects: readonly Subject[],
  scans: readonly Scan[] = noScans,
  before: Stage | null = null,
): Stage => {
  const making = before && makings.get(before);
  const known = making?.scans === scans ? making.placed : null;
  const soup = new Soup();
  const onGround = (mesh: Mesh, finish: Finish) => soup.add({ mesh, tints: null }, finish, -1, false);
  onGround(bareGround, ground.finish);
  for (const relief of ground.relief) onGround(reliefMesh(relief), relief.finish ?? ground.finish);
  const placed = new Map<Subject, PlacedSubject>();
  const shown = subjects.filter(({ hidden }) => !hidden);
  const stageSubjects = shown.map((subject, s) => {
    const here = known?.get(subject) ?? placeSubject(subject, scans);
    placed.set(subject, here);
    subject.parts.forEach((part, p) => {
      const tinted = here.parts[p] as (typeof here.parts)[number];
      const finish = part.finish ?? subject.finish;
      soup.add(tinted, finish, s, part.kind !== 'plane' && finish.transmittance === 0);
    });
    return here.onStage;
  });
  const laidOut = layOut(soup.entries, making?.laidOut ?? null);
  const key = `stage-${++stageCount}`;
  const stage: Stage = { ...laidOut.layout, finishes: soup.finishes, subjects: stageSubjects, key, air: null };
  makings.set(stage, { placed, scans, laidOut });
  return stage;
};

/** Stages that were asked for lately; few, because one of a million triangles takes a hundred megabytes. */
const recent: { setup: Setup; stage: Stage }[] = [];
const mostRecent = 3;

const hazy = new WeakMap<Stage, Stage>();

/** A stage in haze; the same one for the same haze as the last time. */
const inAir = (stage: Stage, air: Air | null): Stage => {
  if (!air) return stage;
  const before = hazy.get(stage);
  if (before?.air?.scatterPerMetre === air.scatterPerMetre) return before;
  const made = { ...stage, air, key: `${stage.key} in haze ${air.scatterPerMetre}` };
  hazy.set(stage, made);
  return made;
};

/** The stage of a setup; setups that share subjects, ground and scans (as edits of lamps do) share the stage. */
export const stageOf = (setup: Setup): Stage => {
  const { subjects, ground, scans } = setup;
  const at = recent.findIndex(
    (entry) => entry.setup.subjects === subjects && entry.setup.ground === ground && entry.setup.scans === scans,
  );
  const entry = recent[at] ?? { setup, stage: buildStage(ground, subjects, scans, recent[0]?.stage) };
  if (at >= 0) recent.splice(at, 1);
  recent.unshift(entry);
  recent.length = Math.min(recent.length, mostRecent);
  return inAir(entry.stage, airOf(setup.place));
};
