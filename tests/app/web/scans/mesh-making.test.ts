import { describe, expect, it } from 'vitest';
import { maxKeptTriangles } from '../../../../app/web/scans/limits.ts';
import { toByte } from '../../../../app/web/scans/mesh/corner-colours.ts';
import { polygonTriangles } from '../../../../app/web/scans/mesh/polygon-triangles.ts';
import { thinMesh } from '../../../../app/web/scans/mesh/thin-mesh.ts';
import { tidyMesh } from '../../../../app/web/scans/mesh/tidy-mesh.ts';
import { maxScanTriangles } from '../../../../core/setup/schema/scan.ts';
import { measureMesh } from './measure.ts';
import { lumpyMesh } from './raw-meshes.ts';

describe('tidyMesh', () => {
  it('makes corners one that meet, leaves out triangles without area, and keeps colours with their triangles', () => {
    const positions = Float64Array.of(
      ...[0, 0, 0, 1, 0, 0, 0, 1, 0],
      ...[1, 0, 0, 0, 1, 0, 1, 1, 0],
      ...[2, 0, 0, 3, 0, 0],
    );
    const indices = Uint32Array.of(0, 1, 2, 0, 1, 3, 0, 6, 7, 3, 5, 4);
    const colours = Uint8Array.of(1, 2, 3, 9, 9, 9, 8, 8, 8, 4, 5, 6);
    const leftOut: string[] = [];
    const tidy = tidyMesh({ positions, indices, colours }, leftOut);
    expect([tidy.positions.length / 3, [...(tidy.colours ?? [])]]).toEqual([4, [1, 2, 3, 4, 5, 6]]);
    expect(measureMesh(tidy).area).toBe(1);
    expect(leftOut).toEqual([]);
  });

  it('does not take a broken corner for one at the middle of the box (found by mutated files)', () => {
    const positions = Float64Array.of(...[Number.NaN, 0, 0], ...[-1, 0, -1, 1, 0, -1, 0, 0, 1], ...[0, 0, 0]);
    const tidy = tidyMesh({ positions, indices: Uint32Array.of(1, 2, 4, 0, 1, 3), colours: null }, []);
    expect(tidy.indices.length).toBe(3);
    expect(tidy.positions.every(Number.isFinite)).toBe(true);
  });

  it('keeps fine shapes far from the origin, as of a survey’s coordinates', () => {
    const ground = lumpyMesh(20, 81);
    const far = ground.positions.map((value, i) => value * 0.01 + ([4_500_000, 200, 5_600_000][i % 3] ?? 0));
    const tidy = tidyMesh({ ...ground, positions: far }, []);
    expect(tidy.indices.length).toBe(ground.indices.length);
  });
});

describe('thinMesh', () => {
  it('thins 20,000 triangles to 3,000 within a hundredth of the size, its border where it was, and says so', async () => {
    const flat = lumpyMesh(100, 82);
    // a smooth shape, so that what thinning may cost is known: 0.1 high waves of length 2
    const ground = {
      ...flat,
      positions: flat.positions.map((value, i, all) =>
        i % 3 === 1 ? 0.1 * Math.sin(Math.PI * (all[i - 1] ?? 0)) : value,
      ),
    };
    const leftOut: string[] = [];
    const before = measureMesh(ground);
    const thin = tidyMesh(await thinMesh(ground, 3000, leftOut), leftOut);
    const after = measureMesh(thin);
    expect(after.triangles).toBeLessThanOrEqual(3000);
    expect(after.triangles).toBeGreaterThan(2500);
    expect(Math.abs(after.area / before.area - 1)).toBeLessThan(0.01);
    expect([after.low, after.high]).toEqual([before.low, before.high]);
    expect(leftOut).toEqual([`20,000 triangles were thinned to ${after.triangles.toLocaleString('en')}`]);
    // every corner still lies on the wave
    for (let i = 0; i < thin.positions.length; i += 3)
      expect(thin.positions[i + 1]).toBeCloseTo(0.1 * Math.sin(Math.PI * (thin.positions[i] ?? 0)), 9);
  });

  it('keeps the mean colour within 2 bytes, and an edge between colours where it was', async () => {
    const flat = lumpyMesh(60, 83);
    const colours = Uint8Array.from(flat.indices, (_, i) => {
      const corner = flat.indices[i - (i % 3)] ?? 0;
      return (flat.positions[corner * 3] ?? 0) < 3 ? 200 : 50;
    });
    const thin = await thinMesh({ ...flat, colours }, 1500, []);
    let wrong = 0;
    for (let t = 0; t < thin.indices.length; t += 3) {
      const x = [0, 1, 2].reduce((sum, c) => sum + (thin.positions[(thin.indices[t + c] ?? 0) * 3] ?? 0) / 3, 0);
      if (Math.abs(x - 3) > 0.5 && Math.abs((thin.colours?.[t] ?? 0) - (x < 3 ? 200 : 50)) > 2) wrong++;
    }
    expect(wrong).toBe(0);
  });

  it('thins even triangles that share nothing to the number asked for', async () => {
    const ground = lumpyMesh(50, 84);
    const apart = {
      positions: Float64Array.from(ground.indices, () => 0).fill(0),
      indices: ground.indices,
      colours: null,
    };
    const positions = new Float64Array(ground.indices.length * 3);
    ground.indices.forEach((corner, i) => {
      // each triangle lifted by its own little height
      for (let k = 0; k < 3; k++)
        positions[i * 3 + k] = (ground.positions[corner * 3 + k] ?? 0) + (k === 1 ? Math.floor(i / 3) * 1e-3 : 0);
    });
    const soup = { ...apart, positions, indices: Uint32Array.from(ground.indices, (_, i) => i) };
    expect((await thinMesh(soup, 1000, [])).indices.length / 3).toBeLessThanOrEqual(1000);
  });

  it('keeps as many triangles as a setup may hold', () => {
    expect(maxKeptTriangles).toBe(maxScanTriangles);
  });
});

describe('polygonTriangles', () => {
  it('cuts a star of 5 points into its area, either way round and whichever way it faces', () => {
    const star = Array.from({ length: 10 }, (_, i) => {
      const [angle, radius] = [(i * Math.PI) / 5, i % 2 ? 0.4 : 1];
      return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
    });
    // ten triangles from the middle, each of half the sine of the angle between
    const area = 10 * 0.5 * 1 * 0.4 * Math.sin(Math.PI / 5);
    for (const points of [star, [...star].reverse()])
      for (const lay of [
        ([u, v]: readonly number[]) => [u, v, 0],
        ([u, v]: readonly number[]) => [0, u, v],
        ([u, v]: readonly number[]) => [u, 0, v],
      ] as const) {
        const corners = points.map((point) => lay(point)) as [number, number, number][];
        const cut = polygonTriangles(corners);
        const mesh = { positions: Float64Array.from(corners.flat()), indices: Uint32Array.from(cut) };
        expect(cut.length).toBe(24);
        expect(measureMesh(mesh).area).toBeCloseTo(area, 12);
      }
  });
});

describe('toByte', () => {
  it('is the byte of IEC 61966-2-1 for every byte’s own light, and cuts off what is beyond', () => {
    for (let byte = 0; byte < 256; byte++) {
      const share = byte / 255;
      expect(toByte(share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4)).toBe(byte);
    }
    expect([toByte(-1), toByte(Number.NaN), toByte(7)]).toEqual([0, 0, 255]);
  });
});
