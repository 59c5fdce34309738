import { describe, expect, it } from 'vitest';
import { finishNamed, finishPresets } from '../../../core/setup/finish-presets.ts';

describe('finishNamed', () => {
  it('gives the finish of every preset by its word, and none for a word that is none', () => {
    expect(finishPresets.length).toBeGreaterThan(10);
    for (const { id, finish } of finishPresets) expect(finishNamed(id)).toBe(finish);
    expect(() => finishNamed('moon cheese')).toThrow('no finish is called "moon cheese"');
  });
});
