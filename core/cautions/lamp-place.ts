import { forEachHit } from '../geometry/cast-ray.ts';
import { cross, dot, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { momentsOf } from '../readings/moments.ts';
import type { Stage } from '../world/stage.ts';
import type { PassRule } from './caution.ts';

/** The lamp is under the ground, at least for a moment. */
export const lampBelowGround: PassRule = ({ pass, light }) => {
  const value = Math.min(...momentsOf(light).map(({ position }) => position[1]));
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

/** What encloses a point. */
export interface Enclosure {
  /** Index of the subject. */
  readonly subject: number;
  /** Shortest way out that was felt, metres. */
  readonly depthMetres: number;
}

/**
 * The subject whose solid parts enclose a point, or null. Along each feeler, leaving a solid counts one and entering one
 * takes one away; a point outside comes to nothing however many solids lie on the way. Planes enclose nothing.
 */
export const enclosureOf = (stage: Stage, point: Vec3): Enclosure | null => {
  const { corners } = stage.tree;
  const corner = (i: number): Vec3 => [corners[i] as number, corners[i + 1] as number, corners[i + 2] as number];
  const votes = new Map<number, number>();
  const depths = new Map<number, number>();
  for (const feeler of feelers) {
    const left = new Map<number, number>();
    forEachHit(stage.tree, point, feeler, (triangle, t) => {
      if (stage.isSolidTriangle[triangle] === 0) return;
      const subject = stage.subjectOfTriangle[triangle] as number;
      const face = cross(
        sub(corner(triangle * 9 + 3), corner(triangle * 9)),
        sub(corner(triangle * 9 + 6), corner(triangle * 9)),
      );
      const leaves = dot(face, feeler) > 0;
      left.set(subject, (left.get(subject) ?? 0) + (leaves ? 1 : -1));
      if (leaves) depths.set(subject, Math.min(depths.get(subject) ?? Number.POSITIVE_INFINITY, t));
    });
    for (const [subject, count] of left) if (count > 0) votes.set(subject, (votes.get(subject) ?? 0) + 1);
  }
  for (const [subject, count] of votes)
    if (count > feelers.length / 2) return { subject, depthMetres: depths.get(subject) as number };
  return null;
};

/** The lamp is inside something solid, at least for a moment. */
export const insideSubject: PassRule = ({ world, pass, light }) => {
  for (const { position } of momentsOf(light)) {
    const enclosure = enclosureOf(world.stage, position);
    const subject = enclosure && world.stage.subjects[enclosure.subject];
    if (!subject) continue;
    return {
      code: 'inside-subject',
      severity: 'danger',
      passId: pass.id,
      message: `${pass.name}: the lamp is inside “${subject.name}”, about ${enclosure.depthMetres.toFixed(2)} m deep. No light gets out. Move it clear.`,
      value: enclosure.depthMetres,
      limit: 0,
    };
  }
  return null;
};
