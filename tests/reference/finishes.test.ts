import { describe, expect, it } from 'vitest';
import { finishGroups, finishNamed, finishPresets, presetOf, shareReturned } from '../../core/setup/finish-presets.ts';
import { finish as finishSchema } from '../../core/setup/schema/fields.ts';
import { normalReflectanceOf } from '../../core/world/stage-finish.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Finishes');

describe('finish presets', () => {
  it.each(finishPresets)(
    '$id: what $label returns lies within its published range',
    ({ id, label, finish, range, source }) => {
      const [low, high] = range;
      check({
        id,
        claim: `share of light that "${label}" returns, within ${Math.round(100 * low)} to ${Math.round(100 * high)} %`,
        source,
        unit: '%',
        expected: 50 * (low + high),
        ours: 100 * shareReturned(finish),
        tolerance: { absolute: 50 * (high - low) },
      });
    },
  );

  it.each([
    ['water', 'water', 1.333, 0.0204],
    ['ice', 'ice', 1.31, 0.018],
    ['white-paint', 'paint', 1.5, 0.04],
  ])('%s: reflectance of its face straight on', (id, name, index, expected) => {
    expect(finishNamed(id).refractiveIndex).toBe(index);
    check({
      id: `${id}, sheen`,
      claim: `reflectance of a face of ${name} straight on, refractive index ${index}`,
      source: 'Fresnel’s equations at normal incidence; indices from memory: CRC Handbook of Chemistry and Physics',
      unit: '',
      expected,
      ours: normalReflectanceOf(finishNamed(id).refractiveIndex),
      tolerance: { absolute: 5e-5 },
    });
  });

  it('are good finishes, each with an id, a label of its own, and a source; every group has some', () => {
    expect(new Set(finishPresets.map(({ id }) => id)).size).toBe(finishPresets.length);
    expect(new Set(finishPresets.map(({ label }) => label)).size).toBe(finishPresets.length);
    for (const { finish, source, label } of finishPresets) {
      expect(finishSchema.parse(finish)).toEqual(finish);
      expect(source.length).toBeGreaterThan(20);
      expect(label.length).toBeLessThanOrEqual(18);
    }
    for (const group of finishGroups) expect(finishPresets.filter((p) => p.group === group).length).toBeGreaterThan(3);
  });

  it('are known again by their numbers; a changed one is none', () => {
    for (const preset of finishPresets) expect(presetOf({ ...preset.finish })?.finish).toEqual(preset.finish);
    expect(presetOf({ ...finishNamed('granite'), gloss: 0.3 })).toBeNull();
    expect(presetOf({ ...finishNamed('granite'), refractiveIndex: 1.4 })?.id).toBe('granite');
  });

  it('wet ones are darker than dry ones of the same', () => {
    for (const [wet, dry] of [
      ['wet-stone', 'granite'],
      ['wet-light-stone', 'limestone'],
      ['wet-soil', 'soil'],
      ['wet-sand', 'sand'],
      ['wet-asphalt', 'asphalt'],
    ] as const)
      expect(shareReturned(finishNamed(wet))).toBeLessThan(shareReturned(finishNamed(dry)));
  });
});
