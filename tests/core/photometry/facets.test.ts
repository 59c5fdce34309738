import { describe, expect, it } from 'vitest';
import { normalize, type Vec3 } from '../../../core/geometry/vec.ts';
import { facetDensity, facetLobe } from '../../../core/photometry/facets.ts';

const up: Vec3 = [0, 1, 0];
const at = (degrees: number): Vec3 => [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180), 0];

describe('facetDensity', () => {
  it('is 1 / (pi alpha²) along the normal, and none of the facets lie on their backs (Walter et al. 2007)', () => {
    for (const alpha of [0.05, 0.3, 1]) {
      expect(facetDensity(alpha, up, up) * Math.PI * alpha ** 2).toBeCloseTo(1, 12);
      expect(facetDensity(alpha, up, at(120))).toBe(0);
      expect(facetDensity(alpha, up, [0, -1, 0])).toBe(0);
    }
  });
});

describe('facetLobe', () => {
  it('is the same with eye and light exchanged, and nothing where either is behind the face', () => {
    const [one, two] = [normalize([0.3, 0.8, 0.5]), normalize([-0.9, 0.4, 0.1])];
    expect(facetLobe(0.3, up, one, two)).toBeCloseTo(facetLobe(0.3, up, two, one), 12);
    expect(facetLobe(0.3, up, one, two)).toBeGreaterThan(0);
    expect(facetLobe(0.3, up, one, at(100))).toBe(0);
    expect(facetLobe(0.3, up, at(100), one)).toBe(0);
  });
});
