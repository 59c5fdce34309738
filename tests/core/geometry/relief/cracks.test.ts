import { describe, expect, it } from 'vitest';
import { closestHit } from '../../../../core/geometry/cast-ray.ts';
import { seededRandom } from '../../../../core/geometry/random.ts';
import { buildRayTree } from '../../../../core/geometry/ray-tree.ts';
import { cracksMesh, divideCracks } from '../../../../core/geometry/relief/cracks.ts';
import { cross, dot, length, scale, sub, type Vec3 } from '../../../../core/geometry/vec.ts';
import { trianglesOf } from '../../support/meshes.ts';
import { sheetShape } from './sheets.ts';

const shape = { ...sheetShape, heightMetres: 0.03, spacingMetres: 0.3, radiusMetres: 4 };
const mesh = cracksMesh(shape);
const tree = buildRayTree(mesh.positions);

/** Places on the bare ground in the gaps of the inner half. */
const gapFloors = (() => {
  const random = seededRandom(4);
  const places = Array.from({ length: 4000 }, (): Vec3 => {
    const [away, turn] = [2 * Math.sqrt(random()), 2 * Math.PI * random()];
    return [away * Math.cos(turn), 0, away * Math.sin(turn)];
  });
  return places.filter(([x, , z]) => !closestHit(tree, [x, 1, z], [0, -1, 0]));
})();

const litShare = (elevationDegrees: number, bearingDegrees = 0): number => {
  const [e, b] = [elevationDegrees, bearingDegrees].map((d) => (d * Math.PI) / 180) as [number, number];
  const toLight: Vec3 = [Math.cos(e) * Math.sin(b), Math.sin(e), -Math.cos(e) * Math.cos(b)];
  const lit = gapFloors.filter(([x, , z]) => !closestHit(tree, [x, 1e-5, z], toLight));
  return lit.length / gapFloors.length;
};

describe('cracksMesh', () => {
  it('leaves gaps down to the ground: 4 % to 30 % of it', () => {
    expect(gapFloors.length / 4000).toBeGreaterThan(0.04);
    expect(gapFloors.length / 4000).toBeLessThan(0.3);
  });

  it('low light leaves the gaps dark, light from straight above none of them', () => {
    expect(litShare(3)).toBeLessThan(0.05);
    expect(litShare(90)).toBe(1);
    expect(litShare(60)).toBeGreaterThan(litShare(30));
    expect(litShare(30)).toBeGreaterThan(litShare(10));
  });

  it('plates are flat with sharp edges: their tops are level within 1°, each corner has the normal of its own face', () => {
    let tops = 0;
    trianglesOf(mesh).forEach(([a, b, c], t) => {
      const face = cross(sub(b, a), sub(c, a));
      const flat = scale(face, 1 / length(face));
      for (const k of [0, 3, 6]) {
        const at = 9 * t + k;
        const normal: Vec3 = [
          mesh.normals[at] as number,
          mesh.normals[at + 1] as number,
          mesh.normals[at + 2] as number,
        ];
        expect(dot(normal, flat)).toBeGreaterThan(1 - 1e-9);
      }
      if (flat[1] > 0.9998) tops++;
    });
    expect(tops).toBeGreaterThan(trianglesOf(mesh).length / 6);
  });

  it('plates are about the spacing across: as many as squares of it (within 15 %)', () => {
    const { radiusMetres, detail } = divideCracks({ ...shape, radiusMetres: 40 });
    const count = cracksMesh({ ...shape, radiusMetres: 40 }).positions.length / 9;
    const squares = (Math.PI * (radiusMetres - 0.75 * shape.spacingMetres) ** 2) / shape.spacingMetres ** 2;
    // six sides on average (Euler), each with a piece of the top and two of the wall
    expect(detail).toEqual({ parts: 1, worn: false });
    expect(Math.abs(count / (6 * 3) / squares - 1)).toBeLessThan(0.15);
  });
});
