import { describe, expect, it } from 'vitest';
import { boxAt, find, still } from '../support/cautions.ts';
import type { OnePass } from '../support/scenes.ts';

const camera = { position: [0, -6, 1.5], aim: [0, 0, 1.5] };

describe('beam-at-sky', () => {
  it('an aim past everything, upward, is a warning, told once: not as too dark as well', () => {
    const what = { camera, pass: still([5, 0, 1.5], [0, 0, 3]) };
    const caution = find(what, 'beam-at-sky');
    expect(caution).toMatchObject({ severity: 'warning', passId: 'pass' });
    expect(caution?.message).toContain('into the sky');
    expect(caution?.message).toContain('aircraft; local law');
    expect(find(what, 'too-dark')).toBeUndefined();
    expect(find(what, 'burnt')).toBeUndefined();
  });
  it('an aim before the sky whose beam comes down on the ground is too dark, and no matter for aircraft', () => {
    const what = { camera, pass: still([5, 0, 5], [0, 0, 3]) };
    expect(find(what, 'beam-at-sky')).toBeUndefined();
    expect(find(what, 'too-dark')?.message).toContain('sees only sky');
  });

  /** A beam of 40 degrees at a thin post, raised so that its axis climbs so steeply. */
  const atPost = (candela: number, climbDegrees: number): OnePass => ({
    camera,
    lamp: { beam: { shape: 'flood', degrees: 40 }, output: { from: 'peak-candela', candela } },
    pass: still([9, 0, 1.5 - 9 * Math.tan((climbDegrees * Math.PI) / 180)], [0, 0, 1.5]),
    subjects: [boxAt('post', [0, 0, 0], [0.1, 0.1, 1.7])],
  });
  // full moon, 0.25 lx, at 150 m: 5,625 cd (SERA.5005(f), least height over open country, from memory)
  it.each([
    [5600, false],
    [5650, true],
  ])('a beam of %d cd that climbs past its target: %s', (candela, told) => {
    const caution = find(atPost(candela, 7), 'beam-at-sky');
    expect(caution !== undefined).toBe(told);
    if (caution) {
      expect(caution.severity).toBe('note');
      expect(caution.message).toContain('local law');
    }
  });
  // a level beam has half of it above the horizon, and a post in that half; the limit is half
  it('a level beam is none, however strong; its share in the sky is told and is past the limit', () => {
    expect(find(atPost(1e6, 0), 'beam-at-sky')).toBeUndefined();
    const caution = find(atPost(1e6, 7), 'beam-at-sky');
    expect(caution?.limit).toBe(0.5);
    expect(caution?.value).toBeGreaterThan(0.5);
    expect(caution?.value).toBeLessThan(0.8);
  });
});
