import { cross, dot, length, normalize, scale, sub, type Vec3 } from '../vec.ts';
import { icosahedronCorners, icosahedronFaces } from './icosahedron.ts';

/** Takes one triangle with the normals of its corners. */
export type AddTriangle = (a: Vec3, b: Vec3, c: Vec3, na: Vec3, nb: Vec3, nc: Vec3) => void;

type Random = () => number;

/** A turn of directions about a random axis by a random angle, as a function; even over all turns (Shoemake 1992). */
const randomTurn = (random: Random): ((p: Vec3) => Vec3) => {
  const [a, b, c] = [random(), 2 * Math.PI * random(), 2 * Math.PI * random()];
  const [r, q] = [Math.sqrt(1 - a), Math.sqrt(a)];
  const [x, y, z, w] = [r * Math.sin(b), r * Math.cos(b), q * Math.sin(c), q * Math.cos(c)];
  const axis: Vec3 = [x, y, z];
  return (p) => {
    const t = scale(cross(axis, p), 2);
    const s = cross(axis, t);
    return [p[0] + w * t[0] + s[0], p[1] + w * t[1] + s[1], p[2] + w * t[2] + s[2]];
  };
};

/** Adds a triangle with the normal of its own face. */
const addFlat = (add: AddTriangle, a: Vec3, b: Vec3, c: Vec3): void => {
  const out = cross(sub(b, a), sub(c, a));
  const normal = scale(out, 1 / Math.max(length(out), 1e-12));
  add(a, b, c, normal, normal, normal);
};

/** Moves and stretches points so that the highest is at height 1 and the sunk share lies under the ground. */
const seated = (points: readonly Vec3[], sunkShare: number): Vec3[] => {
  const ups = points.map((p) => p[1]);
  const [low, high] = [Math.min(...ups), Math.max(...ups)];
  const factor = (1 + sunkShare) / (high - low);
  return points.map(([x, y, z]) => [x * factor, (y - low) * factor - sunkShare, z * factor]);
};

/**
 * An angular stone one metre high, flat-faced, partly in the ground: a ball broken off along a few planes, as crushed
 * gravel and frost-split rock are. 20 triangles.
 */
export const addStone = (random: Random, add: AddTriangle): void => {
  const turn = randomTurn(random);
  const axes: Vec3 = [1 + 0.5 * random(), 0.6 + 0.25 * random(), 0.8 + 0.3 * random()];
  let points = icosahedronCorners.map(turn);
  for (let plane = 0; plane < 5; plane++) {
    const facing = normalize([random() - 0.5, random() - 0.5, random() - 0.5]);
    const limit = 0.5 + 0.3 * random();
    points = points.map((p) => {
      const over = dot(p, facing) - limit;
      // a trace of the ball is left, so that no triangle loses its area
      return over > 0 ? sub(p, scale(facing, 0.96 * over)) : p;
    });
  }
  const shaped = seated(
    points.map(([x, y, z]) => [x * axes[0], y * axes[1], z * axes[2]]),
    0.18,
  );
  for (const [i, j, k] of icosahedronFaces) addFlat(add, shaped[i] as Vec3, shaped[j] as Vec3, shaped[k] as Vec3);
};

/**
 * A small piece of gravel one metre high, flat-faced, its foot in the ground: four corners round it and a slanting ridge.
 * Six triangles, for there are many.
 */
export const addChip = (random: Random, add: AddTriangle): void => {
  const foot = [0, 1, 2, 3].map((corner): Vec3 => {
    const turn = (Math.PI / 2) * (corner + 0.5 * (random() - 0.5));
    const away = 0.75 + 0.45 * random();
    return [1.2 * away * Math.cos(turn), -0.2, away * Math.sin(turn)];
  });
  const lean = 0.4 * (random() - 0.5);
  const ridge = (x: number, up: number): Vec3 => [x, up, lean + 0.3 * (random() - 0.5)];
  const [high, low] = [ridge(0.15 + 0.4 * random(), 1), ridge(-0.2 - 0.4 * random(), 0.55 + 0.4 * random())];
  // corners stand at east, south, west, north of the chip in turn; the ridge runs from east to west
  const [e, s, w, n] = foot as [Vec3, Vec3, Vec3, Vec3];
  addFlat(add, e, n, high);
  addFlat(add, s, e, high);
  addFlat(add, s, high, low);
  addFlat(add, w, s, low);
  addFlat(add, n, w, low);
  addFlat(add, n, low, high);
};

/** A pebble's rings of corners, as angles from its top in radians, and corners a ring; one ring more lies in the ground. */
const pebbleRings = {
  large: { upper: [0.6, 1.25], sides: 12 },
  small: { upper: [0.9], sides: 8 },
} as const;

/**
 * A rounded pebble one metre high, smooth, wider than high, partly in the ground: an ellipsoid of uneven axes, slightly
 * lopsided, open below. 60 triangles if it is large, 24 if not.
 */
export const addPebble = (random: Random, add: AddTriangle, large: boolean): void => {
  const { upper: seen, sides } = pebbleRings[large ? 'large' : 'small'];
  const [long, wide] = [1.25 + 0.5 * random(), 0.85 + 0.35 * random()];
  const [leanX, leanZ] = [0.24 * (random() - 0.5), 0.24 * (random() - 0.5)];
  const [fat, skew, twist] = [0.35 * (random() - 0.5), 0.3 * (random() - 0.5), 2 * Math.PI * random()];
  const sink = 0.16 + 0.14 * random();
  const angles = [...seen, Math.acos(-(sink + 0.1) / (1 - sink))];
  // the top is at height 1, the widest place at `sink`
  const at = (angle: number, side: number): Vec3 => {
    const around = twist + (2 * Math.PI * side) / sides;
    const [c, s] = [Math.cos(around) * Math.sin(angle), Math.sin(around) * Math.sin(angle)];
    const swell = 1 + fat * c * s + skew * c;
    const [x, z] = [long * c * swell, wide * s * swell];
    return [x, sink + (1 - sink) * Math.cos(angle) * (1 + leanX * c + leanZ * s), z];
  };
  const points: Vec3[] = [at(0, 0)];
  for (const angle of angles) for (let side = 0; side < sides; side++) points.push(at(angle, side));
  const faces: [number, number, number][] = [];
  for (let side = 0; side < sides; side++) {
    const next = (side + 1) % sides;
    faces.push([0, 1 + next, 1 + side]);
    for (let ring = 0; ring + 1 < angles.length; ring++) {
      const [upper, lower] = [1 + ring * sides, 1 + (ring + 1) * sides];
      faces.push([upper + side, upper + next, lower + next], [upper + side, lower + next, lower + side]);
    }
  }
  const normals = points.map((): [number, number, number] => [0, 0, 0]);
  for (const [i, j, k] of faces) {
    const [a, b, c] = [points[i], points[j], points[k]] as [Vec3, Vec3, Vec3];
    const out = cross(sub(b, a), sub(c, a));
    for (const corner of [i, j, k]) {
      const sum = normals[corner] as [number, number, number];
      for (const axis of [0, 1, 2] as const) sum[axis] += out[axis];
    }
  }
  const units = normals.map(normalize);
  const [p, n] = [(i: number) => points[i] as Vec3, (i: number) => units[i] as Vec3];
  for (const [i, j, k] of faces) add(p(i), p(j), p(k), n(i), n(j), n(k));
};

const tuftBlades = 10;

/** A tuft of grass one metre high: thin blades, seen from both sides, that bend outward. */
export const addTuft = (random: Random, add: AddTriangle): void => {
  const tallest = Math.floor(tuftBlades * random());
  for (let blade = 0; blade < tuftBlades; blade++) {
    const around = (2 * Math.PI * (blade + random())) / tuftBlades;
    const [c, s] = [Math.cos(around), Math.sin(around)];
    const high = blade === tallest ? 1 : 0.5 + 0.5 * random();
    const lean = (0.1 + 0.65 * random() ** 1.5) * high;
    const root = 0.03 + 0.2 * random();
    const half = 0.02 + 0.02 * random();
    // the flat of a blade faces anyway; its middle stands steeper than its tip
    const facing = around + Math.PI * (0.5 + 0.5 * (random() - 0.5));
    const [wx, wz] = [half * Math.cos(facing), half * Math.sin(facing)];
    const at = (out: number, up: number, side: number): Vec3 => [c * out + side * wx, up, s * out + side * wz];
    const [footL, footR] = [at(root, 0, -1), at(root, 0, 1)];
    const [kneeL, kneeR] = [at(root + 0.35 * lean, 0.62 * high, -0.75), at(root + 0.35 * lean, 0.62 * high, 0.75)];
    const tip = at(root + lean, high, 0);
    addFlat(add, footL, footR, kneeR);
    addFlat(add, footL, kneeR, kneeL);
    addFlat(add, kneeL, kneeR, tip);
  }
};
