import { describe, expect, it } from 'vitest';
import { finish } from '../../../core/setup/schema/fields.ts';
import { surfaceLuminance } from '../../../core/trace/lit-surface.ts';
import { type SurfacePoint, surfaceAlong } from '../../../core/trace/surface-point.ts';
import { buildStage } from '../../../core/world/stage.ts';
import type { Source } from '../../../core/world/world.ts';
import { bareGround, stageWith, subjectOf } from '../support/scenes.ts';

const middle = { u: 0.5, v: 0.5, time: 0.5 };
const moonAt = (up: 1 | -1): Source => ({ kind: 'moon', toward: [0, up, 0], radiusRadians: 1e-5 });

describe('surfaceLuminance', () => {
  it('of rough metal under a moon seen straight in its mirror: lux r / (4 pi alpha^2) (rel 1e-4)', () => {
    // the density of facets along the normal is 1 / (pi alpha^2), masking leaves 1/4 there (Walter et al. 2007)
    const stage = buildStage(
      { ...bareGround, finish: finish.parse({ reflectance: 0.5, metal: true, gloss: 0.5 }) },
      [],
    );
    const surface = surfaceAlong(stage, [0, 2, 0], [0, -1, 0]) as SurfacePoint;
    const [red] = surfaceLuminance(stage, moonAt(1), surface, middle, 'spots');
    // gloss 0.5 is alpha 0.25
    expect(red * ((4 * Math.PI * 0.25 ** 2) / 0.5)).toBeCloseTo(1, 4);
    expect(surfaceLuminance(stage, moonAt(1), surface, middle, 'none')).toEqual([0, 0, 0]);
  });

  describe('of a taut cloth with a clear face before it', () => {
    const cloth = finish.parse({ reflectance: 0.4, transmittance: 0.3, gloss: 1, refractiveIndex: 1.5 });
    const stage = stageWith(
      subjectOf('cloth', [{ kind: 'plane', widthMetres: 2, depthMetres: 2, position: [0, 0, 5] }], { finish: cloth }),
    );
    const from = (height: number) => surfaceAlong(stage, [0, height, 0], [0, height > 5 ? -1 : 1, 0]) as SurfacePoint;
    const green = (height: number, up: 1 | -1) =>
      surfaceLuminance(stage, moonAt(up), from(height), middle, 'spots')[1] * Math.PI;

    it('lets its share through of light from behind, less what the face reflects in and out (rel 0.5 %)', () => {
      // 0.96 gets through straight on; of light from all round a face of index 1.5 reflects 0.0918 (Judd 1942, from memory)
      expect(Math.abs(green(3, 1) / ((0.3 * 0.96 ** 2) / (1 - 0.0918)) - 1)).toBeLessThan(0.005);
    });

    it('returns its share of light from the front in the same way, and is the same from either side', () => {
      expect(green(7, 1) / green(3, 1)).toBeCloseTo(0.4 / 0.3, 9);
    });

    it('has no light from behind where the ground keeps it off', () => {
      expect(green(7, -1)).toBe(0);
    });
  });
});
