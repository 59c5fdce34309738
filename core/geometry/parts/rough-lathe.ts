import { fewestRoundSides } from '../../units/round-sides.ts';
import type { Mesh } from '../mesh.ts';
import { type Rough, roughCreaseRadians, roughened } from '../roughen.ts';
import { meshOfSkin, type Skin, SkinBuilder } from '../skin.ts';
import type { Point2 } from '../triangulate.ts';
import { mix } from '../vec.ts';
import { onCircle, type Straight } from './lathe.ts';

/** How a rough lathe is divided. */
export interface RoughLatheDivisions {
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
  divisions: RoughLatheDivisions,
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
  { around, pieces }: RoughLatheDivisions,
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
