import { closestHit } from '../../../../core/geometry/cast-ray.ts';
import { convexHull, type GroundPoint } from '../../../../core/geometry/hull.ts';
import type { Mesh } from '../../../../core/geometry/mesh.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { buildStage } from '../../../../core/world/stage.ts';
import { boxOfMeshes, meshesOf } from './own-box.ts';
import { changeSubject, subjectNamed } from './subject-edits.ts';
import { withinWorld } from './within.ts';

/** What is so little over the lowest point still belongs to the base, metres. */
const baseMetres = 0.02;
/** How far inside its own edge a corner is tried, so that things that only touch do not count, as a share of the way in. */
const inShare = 0.002;

/** Places on the base that are tried: its corners, the middles of its edges, halfway in, and its middle. World x and z. */
const placesOfBase = (meshes: readonly Mesh[], lowMetres: number): GroundPoint[] => {
  const base: GroundPoint[] = [];
  for (const { positions } of meshes)
    for (let i = 0; i < positions.length; i += 3)
      if ((positions[i + 1] as number) <= lowMetres + baseMetres)
        base.push([positions[i] as number, positions[i + 2] as number]);
  const hull = convexHull(base);
  const middle: GroundPoint = [0, 1].map((axis) => {
    const values = hull.map((p) => p[axis] as number);
    return (Math.min(...values) + Math.max(...values)) / 2;
  }) as unknown as GroundPoint;
  const toward = ([x, z]: GroundPoint, share: number): GroundPoint => [
    x + (middle[0] - x) * share,
    z + (middle[1] - z) * share,
  ];
  const edges = hull.map((p, i): GroundPoint => {
    const next = hull[(i + 1) % hull.length] as GroundPoint;
    return [(p[0] + next[0]) / 2, (p[1] + next[1]) / 2];
  });
  const rim = [...hull, ...edges];
  return [middle, ...rim.map((p) => toward(p, inShare)), ...rim.map((p) => toward(p, 0.5))];
};

/**
 * Stands a subject on the ground or on what lies under its base: rays go down from the height of its top, and the base
 * comes to rest on the highest thing that they meet. Stones and tufts that are strewn over the ground do not lift it. Its
 * lean stays. A locked one stays where it is.
 */
export const setDown = (setup: Setup, subjectId: string): Setup => {
  const subject = subjectNamed(setup, subjectId);
  if (!subject || subject.locked) return setup;
  const ground = { ...setup.ground, relief: setup.ground.relief.filter((relief) => !('count' in relief)) };
  const others = setup.subjects.filter((each) => each !== subject && !each.hidden);
  const { tree } = buildStage(ground, others, setup.scans);
  const meshes = meshesOf(subject, setup.scans);
  const { low, high } = boxOfMeshes(meshes);
  const top = Math.max(high[1], 0) + 1e-3;
  const found = placesOfBase(meshes, low[1]).flatMap(([x, z]) => {
    const hit = closestHit(tree, [x, top, z], [0, -1, 0]);
    return hit ? [top - hit.t] : [];
  });
  const restMetres = Math.max(...found, 0);
  const [east, north, up] = subject.position;
  const to = Math.round((up + restMetres - low[1]) * 1e4) / 1e4 + 0;
  if (Math.abs(to - up) < 1e-4) return setup;
  return changeSubject(setup, subjectId, (each) => ({ ...each, position: withinWorld([east, north, to]) }));
};
