import { describe, expect, it } from 'vitest';
import { heldToFaces } from '../../../core/geometry/held-to-faces.ts';
import { angleBetween, type Vec3 } from '../../../core/geometry/vec.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;

describe('heldToFaces', () => {
  it('leaves normals near their faces and pulls others to at most 85 degrees', () => {
    const positions = Float64Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0);
    const normals = Float64Array.of(0.6, 0, 0.8, 1, 0, 0, 0, 0, -1);
    const held = heldToFaces({ positions, normals }).normals;
    expect([...held.subarray(0, 3)].map((v) => Number(v.toFixed(12)))).toEqual([0.6, 0, 0.8]);
    for (const at of [3, 6]) {
      const normal = [...held.subarray(at, at + 3)] as unknown as Vec3;
      expect(Math.hypot(...normal)).toBeCloseTo(1, 12);
      expect(angleBetween(normal, [0, 0, 1])).toBeLessThanOrEqual(radians(85));
    }
  });
});
