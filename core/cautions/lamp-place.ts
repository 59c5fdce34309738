import { closestHit } from '../geometry/cast-ray.ts';
import { cross, dot, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { middlePlace } from '../readings/pass-reading.ts';
import type { Stage } from '../world/stage.ts';
import type { PassRule } from './caution.ts';

/** The lamp is under the ground. */
export const lampBelowGround: PassRule = ({ pass, light }) => {
  const value = middlePlace(light).position[1];
  if (value >= 0) return null;
  return {
    code: 'lamp-below-ground',
    severity: 'danger',
    passId: pass.id,
    message: `${pass.name}: the lamp is ${(-value).toFixed(2)} m under the ground. Raise it above 0 m.`,
    value,
    limit: 0,
  };
};

/** Directions no edge of an upright thing runs along. */
const feelers: readonly Vec3[] = (
  [
    [0.31, 0.9, 0.29],
    [-0.83, 0.37, 0.41],
    [0.47, 0.23, -0.85],
    [-0.29, -0.51, -0.81],
    [0.77, -0.19, 0.61],
  ] as const
).map(normalize);

/** Index of the subject that encloses a point, or -1: most ways out must meet that subject from the inside first. */
export const enclosingSubject = (stage: Stage, point: Vec3): number => {
  const votes = new Map<number, number>();
  for (const feeler of feelers) {
    const hit = closestHit(stage.tree, point, feeler);
    if (!hit) continue;
    const { corners } = stage.tree;
    const corner = (i: number): Vec3 => [corners[i] as number, corners[i + 1] as number, corners[i + 2] as number];
    const at = hit.triangle * 9;
    const face = cross(sub(corner(at + 3), corner(at)), sub(corner(at + 6), corner(at)));
    const subject = stage.subjectOfTriangle[hit.triangle] as number;
    if (subject >= 0 && dot(face, feeler) > 0) votes.set(subject, (votes.get(subject) ?? 0) + 1);
  }
  for (const [subject, count] of votes) if (count > feelers.length / 2) return subject;
  return -1;
};

/** The lamp is inside something solid. */
export const insideSubject: PassRule = ({ world, pass, light }) => {
  const subject = world.stage.subjects[enclosingSubject(world.stage, middlePlace(light).position)];
  if (!subject) return null;
  return {
    code: 'inside-subject',
    severity: 'danger',
    passId: pass.id,
    message: `${pass.name}: the lamp is inside “${subject.name}”. No light gets out. Move it clear.`,
  };
};
