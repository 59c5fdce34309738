import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { exposureDifferences } from '../../../app/web/compare/exposure-words.ts';
import {
  makeExposureAlike,
  makeLensSchemes,
  makeLowAndHighSchemes,
} from '../../../app/web/state/edits/compare-edits.ts';
import { renameScheme, setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { cameraOf, setFocalLengthSameSize } from '../../../app/web/state/edits/place-edits.ts';
import { distance } from '../../../core/geometry/vec.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const painted = { schemeId: 'side', frameId: 'painted' };
const sky = { schemeId: 'side', frameId: 'sky' };
const start = setFrameNumber(setFrameNumber(stones, painted, 'focusMetres', 7.5), sky, 'focusMetres', 10000);
const frameOf = (setup: Setup, schemeId: string, frameId = 'painted') =>
  setup.schemes.find(({ id }) => id === schemeId)?.frames.find(({ id }) => id === frameId);
const awayOf = (setup: Setup, schemeId: string): number => {
  const { position, aim } = cameraOf(setup, schemeId);
  return distance(position, aim);
};

describe('focus goes along with a camera of the scheme’s own', () => {
  it('a longer lens: as far beyond the aim as before, in shares of the distance (rel 1e-9); the stars stay in focus', () => {
    // the size of the subject is kept: distance goes with focal length, from 24 mm to 85 mm
    const next = setFocalLengthSameSize(start, 'side', 85);
    expect(frameOf(next, 'side')?.focusMetres).toBeCloseTo((7.5 * 85) / stones.camera.focalLengthMm, 8);
    expect(frameOf(next, 'side', 'sky')?.focusMetres).toBe(10000);
    expect(next.schemes[1]).toBe(start.schemes[1]);
    const back = setFocalLengthSameSize(next, 'side', stones.camera.focalLengthMm);
    expect(frameOf(back, 'side')?.focusMetres).toBeCloseTo(7.5, 8);
  });

  it('made schemes: focus over distance to the aim is that of the original in each (rel 1e-9)', () => {
    for (const made of [makeLensSchemes(start, 'side'), makeLowAndHighSchemes(start, 'side')]) {
      expect(made.schemeIds.length).toBeGreaterThan(1);
      for (const id of made.schemeIds) {
        const share = (frameOf(made.setup, id)?.focusMetres ?? 0) / awayOf(made.setup, id);
        expect(share / (7.5 / awayOf(start, 'side'))).toBeCloseTo(1, 9);
        expect(frameOf(made.setup, id, 'sky')?.focusMetres).toBe(10000);
      }
    }
  });

  it('made alike in exposure, such a scheme keeps its focus, and its focus is not told as a difference', () => {
    const iso = setFrameNumber(setFocalLengthSameSize(start, 'front', 85), painted, 'iso', 1600);
    const [side, front] = iso.schemes as [Setup['schemes'][number], Setup['schemes'][number]];
    const words = exposureDifferences(side, [front]).join();
    expect(words).toContain('ISO');
    expect(words).not.toContain('focus');
    const alike = makeExposureAlike(iso, 'side', ['front', 'back']);
    expect(frameOf(alike, 'front')).toMatchObject({
      iso: 1600,
      focusMetres: frameOf(iso, 'front')?.focusMetres,
    });
    // the setup's camera in both
    expect(frameOf(alike, 'back')?.focusMetres).toBe(7.5);
  });

  it('names of made schemes are never cut within a character, and are at most 80 long', () => {
    for (const name of ['🌙'.repeat(40), `x${'🌙'.repeat(39)}`]) {
      const { setup, schemeIds } = makeLensSchemes(renameScheme(stones, 'side', name), 'side');
      expect(schemeIds).toHaveLength(3);
      for (const made of setup.schemes.slice(1, 4)) {
        expect(made.name).toMatch(/🌙 · (24|50|85) mm$/u);
        expect(made.name.length).toBeLessThanOrEqual(80);
        expect(made.name).not.toMatch(/\p{Surrogate}/u);
      }
      expect(parseSetup(formatSetup(setup))).toEqual(setup);
    }
  });
});
