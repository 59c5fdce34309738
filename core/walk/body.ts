import { add, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';

/**
 * Whoever holds a lamp: an upright capsule in clothes. Size and reach are common practice, no published source; what
 * clothes return is that of the finishes of the same names (finish-presets.ts).
 */
export const body = {
  heightMetres: 1.75,
  radiusMetres: 0.25,
  /** From the middle of the body to the lamp, on the level. */
  reachMetres: 0.45,
  reflectance: { dark: 0.05, light: 0.44 },
} as const;

/**
 * Where somebody stands who holds a lamp: behind it, opposite its aim on the level; to the south of a lamp that points
 * straight up or down.
 *
 * @returns the middle of the body, at the lamp's height, world metres
 */
export const bodyBehind = (lamp: Vec3, aim: Vec3): Vec3 => {
  const [x, z] = [lamp[0] - aim[0], lamp[2] - aim[2]];
  const level = Math.hypot(x, z);
  if (level < 1e-6) return [lamp[0], lamp[1], lamp[2] + body.reachMetres];
  const k = body.reachMetres / level;
  return [lamp[0] + x * k, lamp[1], lamp[2] + z * k];
};

/** Where a ray meets a body: how far along it, and the unit normal there. */
export interface BodyHit {
  readonly t: number;
  readonly normal: Vec3;
}

/** Nearest crossing of a ray and a ball from outside, or a negative number. */
const alongBall = (offset: Vec3, direction: Vec3): number => {
  const along = dot(offset, direction);
  const gap2 = dot(offset, offset) - along * along;
  const room = body.radiusMetres ** 2 - gap2;
  return room > 0 ? along - Math.sqrt(room) : -1;
};

/**
 * What a ray meets of a body from outside; null when it passes by, and for an eye within the body.
 *
 * @param feet middle of the body on what it stands on, world metres
 * @param direction unit
 */
export const bodyAlong = (feet: Vec3, origin: Vec3, direction: Vec3): BodyHit | null => {
  const { heightMetres, radiusMetres: r } = body;
  const [low, high] = [feet[1] + r, feet[1] + heightMetres - r];
  const [x, z] = [origin[0] - feet[0], origin[2] - feet[2]];
  const a = direction[0] ** 2 + direction[2] ** 2;
  const b = x * direction[0] + z * direction[2];
  const over = origin[1] - Math.min(Math.max(origin[1], low), high);
  if (x * x + z * z + over * over <= r * r) return null;
  // by how far the ray passes from the axis: the difference of two large squares would be rough
  const aside = x * direction[2] - z * direction[0];
  const root = a * r * r - aside * aside;
  if (root < 0) return null;
  const side = a > 1e-12 ? (-b - Math.sqrt(root)) / a : -1;
  const y = origin[1] + side * direction[1];
  let t = side;
  if (a <= 1e-12 || y < low || y > high) {
    const end = (a <= 1e-12 ? origin[1] : y) < low ? low : high;
    t = alongBall([-x, end - origin[1], -z], direction);
  }
  if (t <= 0) return null;
  const at = add(origin, scale(direction, t));
  const axisY = Math.min(Math.max(at[1], low), high);
  return { t, normal: normalize(sub(at, [feet[0], axisY, feet[2]])) };
};

/** Square of the distance between two straight pieces p + s u and q + t v, s and t from 0 to 1 (Ericson 2005, 5.1.9, from memory). */
const squareBetween = (p: Vec3, u: Vec3, q: Vec3, v: Vec3): number => {
  const r = sub(p, q);
  const [a, e, f, c, b] = [dot(u, u), dot(v, v), dot(v, r), dot(u, r), dot(u, v)];
  const clamp = (x: number) => Math.min(Math.max(x, 0), 1);
  const parts = a * e - b * b;
  const s0 = parts > 1e-12 ? clamp((b * f - c * e) / parts) : 0;
  const t0 = (b * s0 + f) / e;
  const t = clamp(t0);
  const s = t === t0 ? s0 : clamp((b * t - c) / a);
  const d = sub(add(p, scale(u, s)), add(q, scale(v, t)));
  return dot(d, d);
};

/**
 * Whether a body keeps a straight piece from being free.
 *
 * @param feet middle of the body on what it stands on, world metres
 */
export const isInTheWay = (feet: Vec3, from: Vec3, to: Vec3): boolean => {
  const { heightMetres, radiusMetres } = body;
  const axis: Vec3 = [0, heightMetres - 2 * radiusMetres, 0];
  const low: Vec3 = [feet[0], feet[1] + radiusMetres, feet[2]];
  return squareBetween(from, sub(to, from), low, axis) < radiusMetres ** 2;
};

/** An outline cut into cells. */
export interface BodyOutline {
  readonly cells: readonly Vec3[];
  /** The way across it, level, unit. */
  readonly across: Vec3;
  /** Sides of a cell across and up, metres: near what was asked for, so that whole cells make up the body. */
  readonly cellSides: readonly [number, number];
}

/**
 * The outline of a body as a lens on its level sees it, cut into small squares: their middles.
 *
 * @param feet middle of the body on what it stands on, world metres
 * @param eye where it is looked at from, world metres
 * @param cellMetres side of the squares, about
 */
export const bodyOutline = (feet: Vec3, eye: Vec3, cellMetres: number): BodyOutline => {
  const { heightMetres, radiusMetres } = body;
  const [x, z] = [feet[0] - eye[0], feet[2] - eye[2]];
  const level = Math.hypot(x, z);
  const across: Vec3 = level > 1e-9 ? [-z / level, 0, x / level] : [1, 0, 0];
  const columns = Math.max(Math.round((2 * radiusMetres) / cellMetres), 1);
  const rows = Math.max(Math.round(heightMetres / cellMetres), 1);
  const cells: Vec3[] = [];
  for (let r = 0; r < rows; r++)
    for (let c = 0; c < columns; c++) {
      const out = ((c + 0.5) / columns - 0.5) * 2 * radiusMetres;
      const up = ((r + 0.5) / rows) * heightMetres;
      const over = Math.max(radiusMetres - up, up - (heightMetres - radiusMetres), 0);
      if (Math.hypot(out, over) > radiusMetres) continue;
      cells.push(add(feet, add(scale(across, out), [0, up, 0])));
    }
  return { cells, across, cellSides: [(2 * radiusMetres) / columns, heightMetres / rows] };
};
