import { describe, expect, it } from 'vitest';
import { creasedNormals } from '../../../core/geometry/crease.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { angleBetween, cross, dot, normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** A ball of radius 1 round the origin with shared corners, rings by sides; the poles are fans. */
const ball = (rings: number, sides: number) => {
  const positions = [0, 1, 0];
  for (let ring = 1; ring < rings; ring++)
    for (let side = 0; side < sides; side++) {
      const [down, round] = [(ring * Math.PI) / rings, (side * 2 * Math.PI) / sides];
      positions.push(Math.sin(down) * Math.cos(round), Math.cos(down), -Math.sin(down) * Math.sin(round));
    }
  positions.push(0, -1, 0);
  const last = positions.length / 3 - 1;
  const at = (ring: number, side: number) =>
    ring === 0 ? 0 : ring === rings ? last : 1 + (ring - 1) * sides + (side % sides);
  const indices: number[] = [];
  for (let ring = 0; ring < rings; ring++)
    for (let side = 0; side < sides; side++) {
      const [a, b, c, d] = [at(ring, side), at(ring + 1, side), at(ring + 1, side + 1), at(ring, side + 1)];
      if (ring > 0) indices.push(a, c, d);
      if (ring < rings - 1) indices.push(a, b, c);
    }
  return { positions: Float64Array.from(positions), indices: Uint32Array.from(indices) };
};

/** Two squares that meet in an edge along x, the second bent down by an angle. */
const bent = (degrees: number) => ({
  positions: Float64Array.of(
    ...[0, 0, 0, 1, 0, 0, 0, 0, -1, 1, 0, -1],
    ...[0, -Math.sin(radians(degrees)), Math.cos(radians(degrees))],
    ...[1, -Math.sin(radians(degrees)), Math.cos(radians(degrees))],
  ),
  indices: Uint32Array.of(0, 1, 3, 0, 3, 2, 4, 5, 1, 4, 1, 0),
});

describe('creasedNormals', () => {
  it('of a ball of 24 by 48 point away from its middle within half a degree', () => {
    const { positions, indices } = ball(24, 48);
    const normals = creasedNormals(positions, indices, radians(50));
    let most = 0;
    indices.forEach((vertex, corner) => {
      const dot = [0, 1, 2].reduce(
        (sum, k) => sum + (normals[corner * 3 + k] ?? 0) * (positions[vertex * 3 + k] ?? 0),
        0,
      );
      most = Math.max(most, Math.acos(Math.min(dot, 1)));
    });
    expect(most).toBeLessThan(radians(0.5));
  });

  it.each([
    [30, true],
    [49.9, true],
    [50.1, false],
    [90, false],
  ])('smooth a bend of %f degrees: %s', (degrees, smooth) => {
    const { positions, indices } = bent(degrees);
    const normals = creasedNormals(positions, indices, radians(50));
    // corner 0 of the first triangle lies on the bend: halfway between the two faces, or the first face's own
    const expected = smooth ? degrees / 2 : 0;
    const angle = Math.atan2(normals[2] ?? 0, normals[1] ?? 0);
    // halfway by symmetry: both faces have the same angles at that corner in sum
    expect(angle).toBeCloseTo(radians(expected), 12);
  });

  it('do not depend on how a face is cut: a cube with either diagonal, crease 95 degrees, has the same corners', () => {
    // three faces round the corner (0, 0, 0) of a cube; the mean of three equal angles points along (1, 1, 1)
    const corner = Float64Array.of(0, 0, 0, -1, 0, 0, 0, -1, 0, 0, 0, -1, -1, -1, 0, 0, -1, -1, -1, 0, -1);
    const near = Uint32Array.of(0, 1, 4, 0, 4, 2, 0, 2, 5, 0, 5, 3, 0, 3, 6, 0, 6, 1);
    const far = Uint32Array.of(0, 1, 2, 1, 4, 2, 0, 2, 5, 0, 5, 3, 0, 3, 6, 0, 6, 1);
    for (const indices of [near, far]) {
      const normals = creasedNormals(corner, indices, radians(95));
      for (const k of [0, 1, 2]) expect(normals[k]).toBeCloseTo(1 / Math.sqrt(3), 12);
    }
  });

  it('take no square of time where 60,000 triangles meet', () => {
    const sides = 60_000;
    const positions = new Float64Array((sides + 1) * 3);
    for (let i = 0; i < sides; i++)
      positions.set([Math.cos((i * 2 * Math.PI) / sides), -0.1, -Math.sin((i * 2 * Math.PI) / sides)], (i + 1) * 3);
    const indices = Uint32Array.from({ length: sides * 3 }, (_, i) => {
      const side = Math.floor(i / 3);
      return i % 3 === 0 ? 0 : i % 3 === 1 ? 1 + side : 1 + ((side + 1) % sides);
    });
    const start = performance.now();
    const normals = creasedNormals(positions, indices, radians(50));
    expect(performance.now() - start).toBeLessThan(2000);
    // the mean of a cone's faces is its axis
    for (const k of [0, 1, 2]) expect(normals[k]).toBeCloseTo(k === 1 ? 1 : 0, 9);
  });
});

describe('creasedNormals of a crumpled sheet', () => {
  const random = seededRandom(77);
  const size = 20;
  const places = Float64Array.from({ length: size * size * 3 }, (_, i) => {
    const [k, axis] = [Math.floor(i / 3), i % 3];
    return axis === 0 ? k % size : axis === 2 ? Math.floor(k / size) : 1.5 * random();
  });
  const triangles = Uint32Array.from(
    Array.from({ length: (size - 1) ** 2 }, (_, k) => {
      const a = (k % (size - 1)) + size * Math.floor(k / (size - 1));
      return [a, a + size, a + 1, a + 1, a + size, a + size + 1];
    }).flat(),
  );
  const place = (p: number): Vec3 => [places[3 * p], places[3 * p + 1], places[3 * p + 2]] as unknown as Vec3;
  const corners = (t: number) => [0, 1, 2].map((k) => place(triangles[3 * t + k] as number)) as [Vec3, Vec3, Vec3];
  const face = (t: number): Vec3 => {
    const [a, b, c] = corners(t);
    return normalize(cross(sub(b, a), sub(c, a)));
  };

  it.each([10, 40, 90])(
    'are those of the definition, worked out for every pair of faces (%d degrees, abs 1e-9)',
    (degrees) => {
      const normals = creasedNormals(places, triangles, radians(degrees));
      let most = 0;
      for (let t = 0; t < triangles.length / 3; t++)
        for (let k = 0; k < 3; k++) {
          const here = triangles[3 * t + k];
          const sum = [0, 0, 0];
          for (let u = 0; u < triangles.length / 3; u++)
            for (let j = 0; j < 3; j++) {
              if (triangles[3 * u + j] !== here || angleBetween(face(u), face(t)) > radians(degrees)) continue;
              const [p, q, r] = [0, 1, 2].map((s) => corners(u)[(j + s) % 3]) as [Vec3, Vec3, Vec3];
              const angle = angleBetween(sub(q, p), sub(r, p));
              face(u).forEach((v, axis) => {
                sum[axis] = (sum[axis] as number) + angle * v;
              });
            }
          const expected = normalize(sum as unknown as Vec3);
          const at = 9 * t + 3 * k;
          const ours = [normals[at], normals[at + 1], normals[at + 2]] as unknown as Vec3;
          // the means are never so far from a face that they are pulled back
          expect(dot(expected, face(t))).toBeGreaterThan(0.1);
          most = Math.max(most, angleBetween(ours, expected));
        }
      expect(most).toBeLessThanOrEqual(1e-9);
    },
  );

  it('are the faces’ own at 0 degrees (abs 5e-5: flatter than that counts as flat)', () => {
    const normals = creasedNormals(places, triangles, 0);
    for (let t = 0; t < triangles.length / 3; t++)
      face(t).forEach((v, axis) => {
        for (const k of [0, 3, 6])
          expect(Math.abs((normals[9 * t + k + axis] as number) - v)).toBeLessThanOrEqual(5e-5);
      });
  });
});

describe('creasedNormals where more faces meet than are held against each other', () => {
  const sides = 300;
  const turn = (i: number) => (i * 2 * Math.PI) / sides;
  const fan = (down: number) => {
    const rim = Array.from({ length: sides }, (_, i) => [Math.cos(turn(i)), -down, -Math.sin(turn(i))]).flat();
    return {
      places: [0, 0, 0, ...rim],
      triangles: Array.from({ length: sides }, (_, i) => [0, 1 + i, 1 + ((i + 1) % sides)]).flat(),
    };
  };
  const at = (normals: Float64Array, corner: number) => [...normals.subarray(3 * corner, 3 * corner + 3)];

  it('the tip of a spire of 300 sides keeps its faces, a sliver there takes their mean, which is the axis', () => {
    const { places, triangles } = fan(4);
    // the last triangle lies on one edge: it has no area
    const normals = creasedNormals(Float64Array.from(places), Uint32Array.from([...triangles, 0, 1, 0]), radians(50));
    // the middle of a side looks outward and up at the slope 1 / 4 of its middle line
    const out = Math.cos(Math.PI / sides);
    for (const i of [0, 77, 299]) {
      const middle = turn(i + 0.5);
      const face = normalize([4 * Math.cos(middle), out, -4 * Math.sin(middle)]);
      face.forEach((v, axis) => {
        expect(at(normals, 3 * i)[axis]).toBeCloseTo(v, 9);
      });
    }
    expect(at(normals, 3 * sides).map((v) => Number(v.toFixed(9)) + 0)).toEqual([0, 1, 0]);
  });

  it('a wall that stands on a level disc of 300 sides keeps its own, the disc the mean by angles: 2 pi up, pi / 4 aside', () => {
    const { places, triangles } = fan(0);
    const wall = [places.length / 3, places.length / 3 + 1];
    const normals = creasedNormals(
      Float64Array.from([...places, 0, 0, -1, 0, 1, -1]),
      Uint32Array.from([...triangles, 0, ...wall]),
      radians(50),
    );
    const aside = -Math.PI / 4 / Math.hypot(2 * Math.PI, Math.PI / 4);
    const up = (2 * Math.PI) / Math.hypot(2 * Math.PI, Math.PI / 4);
    const own = at(normals, 3 * sides);
    expect(Math.abs(own[0] as number)).toBeCloseTo(1, 12);
    expect(at(normals, 0)).toEqual([-aside * (own[0] as number), up, 0].map((v) => expect.closeTo(v, 9)));
  });
});

describe('creasedNormals of what has no area', () => {
  it('take the mean of what meets there, and point up where nothing does', () => {
    const places = Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 2, 0, 0, 5, 5, 5);
    // a face toward z, a sliver along its edge, and a triangle shrunk to a point
    const normals = creasedNormals(places, Uint32Array.of(0, 1, 2, 0, 3, 1, 4, 4, 4), radians(30));
    expect([...normals.subarray(9, 12)]).toEqual([0, 0, 1]);
    expect([...normals.subarray(18, 21)]).toEqual([0, 1, 0]);
    expect(normals.every(Number.isFinite)).toBe(true);
  });
});
