import { describe, expect, it } from 'vitest';
import { finish } from '../../../core/setup/schema/fields.ts';
import { stageFinishOf } from '../../../core/world/stage-finish.ts';

const of = (fields: object) => stageFinishOf(finish.parse(fields));

describe('stageFinishOf', () => {
  it('gives a matt finish no sheen, nor one whose face does not differ from air', () => {
    expect(of({ reflectance: 0.3 })).toEqual({ reflectance: [0.3, 0.3, 0.3], transmittance: 0, sheen: null });
    expect(of({ reflectance: 0.3, gloss: 0.8, refractiveIndex: 1 }).sheen).toBeNull();
  });

  // ((n - 1) / (n + 1))^2, Fresnel's equations straight on
  it.each([
    [1.5, 0.04],
    [1.333, 0.02037],
  ])('index %d reflects %d straight on, without colour (abs 1e-5)', (refractiveIndex, share) => {
    const { sheen } = of({ reflectance: [0.5, 0.2, 0.1], gloss: 0.5, refractiveIndex });
    for (const channel of sheen?.normalReflectance ?? []) expect(Math.abs(channel - share)).toBeLessThanOrEqual(1e-5);
    expect(sheen?.refractiveIndex).toBe(refractiveIndex);
  });

  it('is a mirror at gloss 1 alone, and the smoother the glossier', () => {
    const alphas = [0.01, 0.3, 0.6, 0.9, 0.999, 1].map((gloss) => of({ gloss }).sheen?.alpha as number);
    expect(alphas.at(-1)).toBe(0);
    alphas.slice(0, -1).forEach((alpha, i) => {
      expect(alpha).toBeGreaterThan(0);
      expect(alpha).toBeLessThanOrEqual(i > 0 ? (alphas[i - 1] as number) : 1);
    });
  });

  it('gives metal a sheen of its own colour with nothing under it; readings still know how much it returns', () => {
    const { reflectance, sheen } = of({ reflectance: [0.9, 0.6, 0.3], metal: true, gloss: 0.4 });
    expect(sheen).toMatchObject({ normalReflectance: [0.9, 0.6, 0.3], refractiveIndex: null, through: null });
    expect(reflectance).toEqual([0.9, 0.6, 0.3]);
  });
});
