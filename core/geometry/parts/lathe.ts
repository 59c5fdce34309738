import { fewestRoundSides } from '../../units/round-sides.ts';
import { heldToFaces } from '../held-to-faces.ts';
import { type Mesh, MeshBuilder } from '../mesh.ts';
import type { Point2 } from '../triangulate.ts';
import { normalize, type Vec3 } from '../vec.ts';

/** A direction in the half plane of a profile: away from the axis, and up. */
type Direction2 = readonly [outward: number, upward: number];

/** A stretch of a profile that is turned about the vertical, with the surface's normals at its ends. */
export interface Stretch {
  readonly from: Point2;
  readonly to: Point2;
  readonly fromNormal: Direction2;
  readonly toNormal: Direction2;
}

/** A place on a circle round the vertical axis: `turn` in radians, counter-clockwise seen from above, 0 = east; radius and height in metres. */
export const onCircle = (turn: number, radius: number, height: number): Vec3 => [
  Math.cos(turn) * radius,
  height,
  -Math.sin(turn) * radius,
];

/** The skins of stretches, outside to the right of each; smooth round the axis unless sides are few. */
export const turnedMesh = (stretches: readonly Stretch[], sides: number): Mesh => {
  const builder = new MeshBuilder();
  const normalAt = (n: Direction2, turn: number): Vec3 => normalize(onCircle(turn, n[0], n[1]));
  for (let s = 0; s < sides; s++) {
    const [a, b] = [(2 * Math.PI * s) / sides, (2 * Math.PI * ((s + 1) % sides)) / sides];
    for (const { from, to, fromNormal, toNormal } of stretches)
      builder.quad(
        onCircle(a, ...from),
        onCircle(b, ...from),
        onCircle(b, ...to),
        onCircle(a, ...to),
        sides < fewestRoundSides
          ? undefined
          : [normalAt(fromNormal, a), normalAt(fromNormal, b), normalAt(toNormal, b), normalAt(toNormal, a)],
      );
  }
  return heldToFaces(builder.build());
};

/** A straight piece of a profile; it leaves the axis, or lies off it. */
export type Straight = readonly [from: Point2, to: Point2];

const unit = ([u, v]: Direction2): Direction2 => {
  const length = Math.hypot(u, v);
  return [u / length, v / length];
};

/** The mean of two directions that lie within the crease angle, else the first. */
const joined = (own: Direction2, other: Direction2, creaseRadians: number): Direction2 =>
  own[0] * other[0] + own[1] * other[1] >= Math.cos(creaseRadians) - 1e-9
    ? unit([own[0] + other[0], own[1] + other[1]])
    : own;

/**
 * A profile turned about the vertical.
 *
 * @param profile its stretches, each [distance from the axis, up] in metres at both ends, from the foot up along the
 * outside. Each begins where the one before ends, the first where the last ends; on the axis there may be room between
 * @param creaseRadians stretches that meet at a smaller angle look like one curve
 */
export const latheMesh = (profile: readonly Straight[], sides: number, creaseRadians: number): Mesh => {
  const count = profile.length;
  const normals = profile.map(([from, to]) => unit([to[1] - from[1], from[0] - to[0]]));
  /** Normal at the joint of a stretch with its neighbour; on the axis that is its own mirror image. */
  const joint = (own: number, neighbour: number, at: Point2): Direction2 => {
    const mine = normals[own] as Direction2;
    const theirs: Direction2 = at[0] > 0 ? (normals[neighbour] as Direction2) : [-mine[0], mine[1]];
    return joined(mine, theirs, creaseRadians);
  };
  return turnedMesh(
    profile.map(([from, to], i) => ({
      from,
      to,
      fromNormal: joint(i, (i + count - 1) % count, from),
      toNormal: joint(i, (i + 1) % count, to),
    })),
    sides,
  );
};
