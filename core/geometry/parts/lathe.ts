import { fewestRoundSides } from '../../units/round-sides.ts';
import { heldToFaces } from '../held-to-faces.ts';
import { type Mesh, MeshBuilder } from '../mesh.ts';
import { type Rough, roughCreaseRadians, roughened } from '../roughen.ts';
import { meshOfSkin, type Skin, SkinBuilder } from '../skin.ts';
import type { Point2 } from '../triangulate.ts';
import { mix, normalize, type Vec3 } from '../vec.ts';

/** A direction in the half plane of a profile: away from the axis, and up. */
type Direction2 = readonly [outward: number, upward: number];

/** A stretch of a profile that is turned about the vertical, with the surface's normals at its ends. */
export interface Stretch {
  readonly from: Point2;
  readonly to: Point2;
  readonly fromNormal: Direction2;
  readonly toNormal: Direction2;
}

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
type Straight = readonly [from: Point2, to: Point2];

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

/** How a rough lathe is divided. */
export interface LatheDivisions {
  /** Pieces round the axis: a multiple of the sides where these are flat. */
  readonly around: number;
  /** Pieces of each stretch of the profile. */
  readonly pieces: readonly number[];
  /** About how long the pieces are, metres. */
  readonly cellMetres: number;
}

/** Seven flat sides meet at 51 degrees. */
const flatCreaseRadians = Math.PI / 4;

/** The same as `latheMesh`, divided finely and uneven. */
export const roughLatheMesh = (
  profile: readonly Straight[],
  sides: number,
  creaseRadians: number,
  rough: Rough,
  divisions: LatheDivisions,
): Mesh => {
  const isFlat = sides < fewestRoundSides;
  const { skin, room } = dividedLathe(profile, divisions, isFlat ? sides : divisions.around);
  const crease = isFlat ? flatCreaseRadians : Math.max(roughCreaseRadians, creaseRadians);
  const region = thicknessOf(profile);
  const thickness = (corner: number) => Math.min(room[corner] as number, region);
  return meshOfSkin(roughened(skin, rough, divisions.cellMetres, thickness, true), crease);
};

/** About a third of how thick the turned region is: area over rim. */
const thicknessOf = (profile: readonly Straight[]): number => {
  let [area, rim] = [0, 0];
  profile.forEach(([[u, v], [nextU, nextV]], i) => {
    const [next] = profile[(i + 1) % profile.length] as Straight;
    area += (u * nextV - v * nextU) / 2;
    // what runs along the axis counts too
    rim += Math.hypot(nextU - u, nextV - v) + Math.abs(next[1] - nextV);
  });
  return (0.7 * Math.abs(area)) / rim;
};

/** How far a ring of corners may move before it comes near the axis; a lid or a dome may move up and down there too. */
const roomAt = (radius: number, outward: number): number => {
  if (radius > 0) return (0.6 * radius) / Math.max(outward, 1e-6);
  return outward < 0.3 ? Number.POSITIVE_INFINITY : 0;
};

/** Rings of corners along the profile, one corner where it meets the axis, and how far each may move. */
const dividedLathe = (
  profile: readonly Straight[],
  { around, pieces }: LatheDivisions,
  polygon: number,
): { readonly skin: Skin; readonly room: readonly number[] } => {
  const builder = new SkinBuilder();
  const room: number[] = [];
  const perSide = around / polygon;
  const turn = (s: number) => (2 * Math.PI * s) / polygon;
  const made = new Map<Point2, readonly number[]>();
  const ring = (at: Point2, outward: number): readonly number[] => {
    const corners =
      made.get(at) ??
      Array.from({ length: at[0] > 0 ? around : 1 }, (_, k) => {
        const side = Math.floor(k / perSide);
        return builder.corner(
          mix(onCircle(turn(side), ...at), onCircle(turn(side + 1), ...at), (k % perSide) / perSide),
        );
      });
    made.set(at, corners);
    const own = roomAt(at[0], outward);
    for (const corner of corners) room[corner] = Math.min(room[corner] ?? own, own);
    return corners;
  };
  const at = (corners: readonly number[], k: number) => corners[k % corners.length] as number;
  profile.forEach(([from, to], s) => {
    const count = pieces[s] as number;
    const outward = Math.abs(to[1] - from[1]) / Math.hypot(to[0] - from[0], to[1] - from[1]);
    let low = ring(from, outward);
    for (let piece = 1; piece <= count; piece++) {
      const t = piece / count;
      const high = ring(piece === count ? to : [from[0] * (1 - t) + to[0] * t, from[1] * (1 - t) + to[1] * t], outward);
      for (let k = 0; k < around; k++) builder.quad(at(low, k), at(low, k + 1), at(high, k + 1), at(high, k));
      low = high;
    }
  });
  return { skin: builder.build(), room };
};
