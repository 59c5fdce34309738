import { cross, length, normalize, sub, type Vec3 } from './vec.ts';

/** Triangles with a normal at each corner. Corners go counter-clockwise seen from outside. */
export interface Mesh {
  /** Corner positions in metres, three numbers a corner, nine a triangle. */
  readonly positions: Float64Array;
  /** Unit normals, laid out like `positions`. */
  readonly normals: Float64Array;
}

/** Collects triangles. */
export class MeshBuilder {
  private readonly positions: number[] = [];
  private readonly normals: number[] = [];

  /** A triangle with its corners' own normals (smooth), or its face normal where none are given (flat). */
  triangle(a: Vec3, b: Vec3, c: Vec3, normals?: readonly [Vec3, Vec3, Vec3]): void {
    const face = cross(sub(b, a), sub(c, a));
    if (length(face) < 1e-12) return;
    const flat = normalize(face);
    const [na, nb, nc] = normals ?? [flat, flat, flat];
    this.positions.push(...a, ...b, ...c);
    this.normals.push(...na, ...nb, ...nc);
  }

  /** Two triangles; corners counter-clockwise seen from outside. */
  quad(a: Vec3, b: Vec3, c: Vec3, d: Vec3, normals?: readonly [Vec3, Vec3, Vec3, Vec3]): void {
    if (normals) {
      const [na, nb, nc, nd] = normals;
      this.triangle(a, b, c, [na, nb, nc]);
      this.triangle(a, c, d, [na, nc, nd]);
    } else {
      this.triangle(a, b, c);
      this.triangle(a, c, d);
    }
  }

  build(): Mesh {
    return { positions: new Float64Array(this.positions), normals: new Float64Array(this.normals) };
  }
}

/** A rigid placement: columns of the rotation and the translation, `targetFromSource`. */
export interface Rigid {
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
  readonly origin: Vec3;
}

/** A point moved and turned. */
export const transformPoint = (m: Rigid, p: Vec3): Vec3 => {
  const q = transformDirection(m, p);
  return [q[0] + m.origin[0], q[1] + m.origin[1], q[2] + m.origin[2]];
};

/** A direction turned. */
export const transformDirection = (m: Rigid, d: Vec3): Vec3 => [
  m.x[0] * d[0] + m.y[0] * d[1] + m.z[0] * d[2],
  m.x[1] * d[0] + m.y[1] * d[1] + m.z[1] * d[2],
  m.x[2] * d[0] + m.y[2] * d[1] + m.z[2] * d[2],
];

/** `outer` after `inner`. */
export const composeRigid = (outer: Rigid, inner: Rigid): Rigid => ({
  x: transformDirection(outer, inner.x),
  y: transformDirection(outer, inner.y),
  z: transformDirection(outer, inner.z),
  origin: transformPoint(outer, inner.origin),
});

/**
 * Placement from three turns in radians, applied roll first, then tilt, then turn.
 *
 * @param turn about the vertical, clockwise seen from above, like a bearing
 * @param tilt about the thing's own east axis; positive leans its top toward its own north (away from a camera in the south)
 * @param roll about the thing's own north axis; positive leans its top toward its own east
 */
export const rigidFromTurns = (origin: Vec3, turn: number, tilt: number, roll: number): Rigid => {
  const [ct, st, ci, si, cr, sr] = [turn, tilt, roll].flatMap((a) => [Math.cos(a), Math.sin(a)]) as number[] as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const about = (x: Vec3, y: Vec3, z: Vec3): Rigid => ({ x, y, z, origin: [0, 0, 0] });
  const byRoll = about([cr, -sr, 0], [sr, cr, 0], [0, 0, 1]);
  const byTilt = about([1, 0, 0], [0, ci, -si], [0, si, ci]);
  const byTurn = about([ct, 0, st], [0, 1, 0], [-st, 0, ct]);
  return { ...composeRigid(byTurn, composeRigid(byTilt, byRoll)), origin };
};
