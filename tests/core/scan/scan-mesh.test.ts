import { describe, expect, it } from 'vitest';
import { creaseNormals } from '../../../core/scan/crease-normals.ts';
import { luminanceOf, meanColour, tintsOf } from '../../../core/scan/mesh-colours.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import { scanMesh } from '../../../core/scan/scan-mesh.ts';
import { normalErrors } from '../support/meshes.ts';
import { unevenGround } from './soups.ts';

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

describe('creaseNormals', () => {
  it('of a ball of 24 by 48 point away from its middle within half a degree', () => {
    const { positions, indices } = ball(24, 48);
    const normals = creaseNormals(positions, indices, radians(50));
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
    const normals = creaseNormals(positions, indices, radians(50));
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
      const normals = creaseNormals(corner, indices, radians(95));
      for (const k of [0, 1, 2]) expect(normals[k]).toBeCloseTo(1 / Math.sqrt(3), 12);
    }
  });

  it('leave a corner of more than 128 triangles flat rather than take the square of their number in time', () => {
    const sides = 60_000;
    const positions = new Float64Array((sides + 1) * 3);
    for (let i = 0; i < sides; i++)
      positions.set([Math.cos((i * 2 * Math.PI) / sides), -0.1, -Math.sin((i * 2 * Math.PI) / sides)], (i + 1) * 3);
    const indices = Uint32Array.from({ length: sides * 3 }, (_, i) => {
      const side = Math.floor(i / 3);
      return i % 3 === 0 ? 0 : i % 3 === 1 ? 1 + side : 1 + ((side + 1) % sides);
    });
    const start = performance.now();
    const normals = creaseNormals(positions, indices, radians(50));
    expect(performance.now() - start).toBeLessThan(2000);
    expect(normals.every(Number.isFinite)).toBe(true);
  });
});

describe('tintsOf', () => {
  it('has a mean luminance of 1 over the area (rel 1e-6), with the weights of BT.709', () => {
    const ground = unevenGround(5000, 11);
    const tints = tintsOf(ground);
    let [sum, area] = [0, 0];
    for (let t = 0; t < ground.indices.length; t += 3) {
      const p = [0, 1, 2].map((k) => ground.positions.subarray((ground.indices[t + k] ?? 0) * 3));
      const edge = (to: number, axis: number) => (p[to]?.[axis] ?? 0) - (p[0]?.[axis] ?? 0);
      const cross = [0, 1, 2].map((k) => {
        const [i, j] = [(k + 1) % 3, (k + 2) % 3];
        return edge(1, i) * edge(2, j) - edge(1, j) * edge(2, i);
      });
      const twice = Math.hypot(...cross);
      area += twice;
      sum += twice * (0.2126 * (tints[t] ?? 0) + 0.7152 * (tints[t + 1] ?? 0) + 0.0722 * (tints[t + 2] ?? 0));
    }
    expect(sum / area).toBeCloseTo(1, 6);
  });

  it('takes sRGB bytes as light: half white and half black has the mean luminance of a white of one half', () => {
    const positions = Float64Array.of(0, 0, 0, 1, 0, 0, 0, 0, -1, 1, 0, -1);
    const coloured = {
      positions,
      indices: Uint32Array.of(0, 1, 3, 0, 3, 2),
      colours: Uint8Array.of(255, 255, 255, 0, 0, 0),
    };
    expect(luminanceOf(...meanColour(coloured))).toBeCloseTo(0.5, 12);
    expect([...tintsOf(coloured)]).toEqual([2, 2, 2, 0, 0, 0]);
  });
});

describe('scanMesh', () => {
  it('gives unit normals within the crease angle of each face, tints, and the same object when asked again', () => {
    const packed = encodeScan(unevenGround(20_000, 12));
    const made = scanMesh(packed);
    expect(made.mesh.positions.length).toBe(packed.triangleCount * 9);
    expect(made.tints?.length).toBe(packed.triangleCount * 3);
    const { fromUnit, leastCosine } = normalErrors(made.mesh);
    expect(fromUnit).toBeLessThan(1e-12);
    // a corner's normal is a mean of normals within 50 degrees of its own face
    expect(leastCosine).toBeGreaterThan(Math.cos(radians(50)));
    expect(scanMesh(packed)).toBe(made);
  });

  it('of 15 times as many triangles takes at most 100 times as long (the square would be 225), however busy the machine', () => {
    const timeOf = (triangles: number, seed: number) => {
      const packed = encodeScan(unevenGround(triangles, seed));
      const start = performance.now();
      scanMesh(packed);
      return performance.now() - start;
    };
    timeOf(20_000, 13);
    const [small, large] = [Math.min(timeOf(20_000, 14), timeOf(20_000, 15)), timeOf(300_000, 16)];
    console.log(`scanMesh: ${small.toFixed(0)} ms for 20,000 triangles, ${large.toFixed(0)} ms for 300,000`);
    expect(large / small).toBeLessThan(100);
  });
});
