import type { Triple } from '../colour/matrix.ts';
import { closestHit } from '../geometry/cast-ray.ts';
import { add, cross, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import type { Stage } from '../world/stage.ts';
import type { StageFinish } from '../world/stage-finish.ts';
import type { Receiver } from './arrival.ts';

/** A place on the stage as light meets it. */
export interface SurfacePoint {
  readonly position: Vec3;
  /** Unit shading normal, on the side that was looked at. */
  readonly normal: Vec3;
  /** Where light falls: on the smooth surface that the triangles stand for. */
  readonly place: Vec3;
  /** Where shadow rays start: just off the face from `place`. */
  readonly shadowOrigin: Vec3;
  /** The finish's reflectance, linear RGB, with the tint of the place. */
  readonly reflectance: Triple;
  readonly finish: StageFinish;
  /** Unit, to where it was looked at from. */
  readonly toEye: Vec3;
  /** Unit normal of the flat face, on the side that was looked at. */
  readonly face: Vec3;
  /** The other side of cloth, which light falls through; null where nothing is let through. */
  readonly far: Receiver | null;
  /** Index of the subject, -1 for the ground. */
  readonly subject: number;
  /** Distance along the ray that found it, metres. */
  readonly distance: number;
}

/** How far shadow rays start off a surface: a hair more than the rounding of 32-bit coordinates, in metres. */
export const surfaceOffset = (p: Vec3): number => 1e-5 * (1 + Math.max(Math.abs(p[0]), Math.abs(p[1]), Math.abs(p[2])));

/**
 * Cloth drawn as a shell up to this thick counts as one sheet, metres: light from behind that is let through is looked for
 * from farther in, so that the shell's other face does not keep it off.
 */
export const sheetMetres = 5e-4;

const triple = (a: Float32Array, i: number): Vec3 => [a[i] as number, a[i + 1] as number, a[i + 2] as number];
const weighted = (a: Vec3, b: Vec3, c: Vec3, u: number, v: number): Vec3 => {
  const w = 1 - u - v;
  return [a[0] * w + b[0] * u + c[0] * v, a[1] * w + b[1] * u + c[1] * v, a[2] * w + b[2] * u + c[2] * v];
};

/** A reflectance times the tint of a triangle; nothing returns more light than it gets. */
const tinted = (reflectance: Triple, tints: Float32Array | null, triangle: number): Triple => {
  if (!tints) return reflectance;
  const at = (c: 0 | 1 | 2) => Math.min(reflectance[c] * (tints[triangle * 3 + c] as number), 1);
  return [at(0), at(1), at(2)];
};

/** A point pulled up onto the tangent plane at a corner, never below the triangle. */
const liftToTangent = (p: Vec3, corner: Vec3, normal: Vec3): Vec3 => {
  const below = Math.min(dot(sub(p, corner), normal), 0);
  return sub(p, scale(normal, below));
};

/**
 * What a ray from the camera (or any eye) meets first, or null.
 *
 * The shading normal is interpolated, the shadow origin lies on the curved surface that the corner normals describe
 * (Hanika 2021, Ray Tracing Gems II, chapter 4), so that coarse round things show no steps where light grazes.
 *
 * @param direction unit
 */
export const surfaceAlong = (stage: Stage, origin: Vec3, direction: Vec3): SurfacePoint | null => {
  const hit = closestHit(stage.tree, origin, direction);
  if (!hit) return null;
  const finish = stage.finishes[stage.finishOfTriangle[hit.triangle] as number] as StageFinish;
  const i = hit.triangle * 9;
  const { corners } = stage.tree;
  const [a, b, c] = [triple(corners, i), triple(corners, i + 3), triple(corners, i + 6)];
  const [na, nb, nc] = [triple(stage.normals, i), triple(stage.normals, i + 3), triple(stage.normals, i + 6)];
  const face = normalize(cross(sub(b, a), sub(c, a)));
  // seen from behind, everything turns round
  const side = dot(face, direction) > 0 ? -1 : 1;
  const position = weighted(a, b, c, hit.u, hit.v);
  const receiverOn = (side: number, inMetres: number): Receiver => {
    const [sa, sb, sc] = side > 0 ? [na, nb, nc] : [scale(na, -1), scale(nb, -1), scale(nc, -1)];
    const [la, lb, lc] = [
      liftToTangent(position, a, sa),
      liftToTangent(position, b, sb),
      liftToTangent(position, c, sc),
    ];
    const place = weighted(la, lb, lc, hit.u, hit.v);
    return {
      place,
      normal: normalize(weighted(sa, sb, sc, hit.u, hit.v)),
      shadowOrigin: add(place, scale(face, side * (surfaceOffset(position) + inMetres))),
    };
  };
  return {
    position,
    ...receiverOn(side, 0),
    far: finish.transmittance > 0 ? receiverOn(-side, sheetMetres) : null,
    toEye: scale(direction, -1),
    face: scale(face, side),
    reflectance: tinted(finish.reflectance, stage.tints, hit.triangle),
    finish,
    subject: stage.subjectOfTriangle[hit.triangle] as number,
    distance: hit.t,
  };
};
