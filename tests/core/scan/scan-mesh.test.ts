import { describe, expect, it } from 'vitest';
import { checkScanData } from '../../../core/scan/checked-scans.ts';
import { luminanceOf, meanColour, tintsOf } from '../../../core/scan/mesh-colours.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import { scanMesh } from '../../../core/scan/scan-mesh.ts';
import { normalErrors } from '../support/meshes.ts';
import { unevenGround } from './soups.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;

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

  it('changes nothing where all is black, or where there is no surface to have a mean', () => {
    const corners = (...positions: number[]) => ({
      positions: Float64Array.from(positions),
      indices: Uint32Array.of(0, 1, 2),
      colours: Uint8Array.of(0, 0, 0),
    });
    const black = corners(0, 0, 0, 1, 0, 0, 0, 0, 1);
    expect([...tintsOf(black)]).toEqual([1, 1, 1]);
    const thread = { ...corners(0, 0, 0, 1, 0, 0, 2, 0, 0), colours: Uint8Array.of(200, 100, 50) };
    expect(meanColour(thread)).toEqual([0, 0, 0]);
    expect([...tintsOf(thread)]).toEqual([1, 1, 1]);
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

  it('takes the triangles that checking the scan has unpacked, and unpacks those of another scan itself', () => {
    const packed = encodeScan(unevenGround(200, 17));
    let looks = 0;
    const scan = {
      ...packed,
      get data() {
        looks++;
        return packed.data;
      },
    };
    checkScanData(scan);
    expect(looks).toBe(1);
    const made = scanMesh(scan);
    expect(looks).toBe(1);
    expect(made).toEqual(scanMesh(packed));
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
