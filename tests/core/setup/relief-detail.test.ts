import { describe, expect, it } from 'vitest';
import {
  countForDensity,
  densityOfCount,
  maxSheetTriangles,
  trianglesOfRelief,
} from '../../../core/setup/relief-detail.ts';
import { relief as reliefSchema } from '../../../core/setup/schema/ground.ts';
import type { Relief } from '../../../core/setup/schema/setup.ts';
import { reliefMesh } from '../../../core/world/ground-mesh.ts';

const drawn = (relief: Relief): number => reliefMesh(relief).positions.length / 9;

describe('trianglesOfRelief', () => {
  it.each(['stones', 'tufts', 'pebbles', 'gravel'])('is exactly what 53 %s become', (kind) => {
    const relief = reliefSchema.parse({ kind, count: 53, heightMetres: [0.02, 0.1] });
    expect(trianglesOfRelief(relief)).toBe(drawn(relief));
  });

  it.each(['ripples', 'drifts', 'cracks', 'pool'])(
    'is never under what %s become, at their defaults and far out',
    (kind) => {
      for (const more of [{}, { radiusMetres: 500, spacingMetres: 0.02 }]) {
        const relief = reliefSchema.parse({ kind, ...more });
        expect(trianglesOfRelief(relief)).toBe(maxSheetTriangles);
        expect(drawn(relief)).toBeLessThanOrEqual(maxSheetTriangles);
        expect(drawn(relief)).toBeGreaterThan(maxSheetTriangles / 3);
      }
    },
  );
});

describe('countForDensity', () => {
  it('ten a square metre on a circle of 3 m are 283: π r² (computed)', () => {
    expect(countForDensity(10, 3)).toBe(283);
    expect(densityOfCount(283, 3)).toBeCloseTo(10, 1);
  });

  it('stays within what the document takes: 0 to 20,000', () => {
    expect(countForDensity(1000, 500)).toBe(20_000);
    expect(countForDensity(0, 500)).toBe(0);
    expect(reliefSchema.safeParse({ kind: 'stones', count: 20_000, heightMetres: [0.1, 0.1] }).success).toBe(true);
  });
});
