import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { frameKinds, framePurposes } from '../../../app/web/state/edits/frame-kinds.ts';
import {
  addFrame,
  duplicateFrame,
  moveFrame,
  removeFrame,
  renameFrame,
} from '../../../app/web/state/edits/frame-list.ts';
import { mostFrames } from '../../../app/web/state/edits/most-frames.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { exactFNumber, exactIso, exactSeconds } from '../../../core/units/third-stops.ts';
import { stones } from './subject-setups.ts';

const place = { schemeId: 'side', frameId: 'painted' };
const schemeIn = (setup: Setup) => setup.schemes.find(({ id }) => id === 'side') as Scheme;
const frameIn = (setup: Setup, id: string) => schemeIn(setup).frames.find((frame) => frame.id === id) as Frame;
const namesIn = (setup: Setup) => schemeIn(setup).frames.map(({ name }) => name);
const asFile = (setup: Setup) => parseSetup(formatSetup(setup));

const entry = (frameId: string, weight = 1) =>
  ({ frameId, weight, where: 'everything', subjectId: null, featherPixels: 0 }) as const;
const blended = (...frames: Scheme['blend']['frames']): Setup => ({
  ...stones,
  schemes: stones.schemes.map((scheme) =>
    scheme.id === 'side' ? { ...scheme, blend: { mode: 'add' as const, frames } } : scheme,
  ),
});
const blendIn = (setup: Setup) => schemeIn(setup).blend.frames.map(({ frameId, weight }) => [frameId, weight]);

describe('addFrame', () => {
  it.each(framePurposes)('puts a %s frame last, without lamps, in a setup that the parser takes', (purpose) => {
    const { setup, frameId } = addFrame(stones, place, purpose);
    expect(asFile(setup)).toEqual(setup);
    expect(schemeIn(setup).frames.at(-1)?.id).toBe(frameId);
    expect(frameIn(setup, frameId)).toMatchObject({ ...frameKinds[purpose].exposure, purpose, passes: [] });
    expect(setup.schemes.slice(1)).toEqual(stones.schemes.slice(1));
  });

  it('focuses a sky frame on the stars and the others where the shown frame is, all with its white balance', () => {
    const shown = frameIn(stones, 'painted');
    const made = framePurposes.map((purpose) => {
      const { setup, frameId } = addFrame(stones, place, purpose);
      return frameIn(setup, frameId);
    });
    expect(made.map(({ focusMetres }) => focusMetres)).toEqual([10000, shown.focusMetres, shown.focusMetres]);
    for (const { whiteBalance } of made) expect(whiteBalance).toEqual(shown.whiteBalance);
  });

  it.each([
    // 500 over the focal length (common practice, no published source) allows 35.7, 20.8, 12.5, 10 and 2.5 s
    [14, 15],
    [24, 15],
    [40, 10],
    [50, 10],
    [200, 2.5],
  ])('keeps stars from drawing lines through %d mm: %d s', (focalLengthMm, seconds) => {
    const setup = { ...stones, camera: { ...stones.camera, focalLengthMm } };
    const made = addFrame(setup, place, 'sky');
    expect(frameIn(made.setup, made.frameId).seconds).toBe(seconds);
  });

  it('gives the land about three stops more than the sky (common practice, no published source; within 1/6 stop)', () => {
    const light = ({ aperture, seconds, iso }: Pick<Frame, 'aperture' | 'seconds' | 'iso'>) =>
      (exactSeconds(seconds) * exactIso(iso)) / exactFNumber(aperture) ** 2;
    const stops = Math.log2(light(frameKinds.land.exposure) / light(frameKinds.sky.exposure));
    expect(Math.abs(stops - 3)).toBeLessThan(1 / 6);
  });

  it('takes a name and an id that are free', () => {
    const twice = addFrame(addFrame(stones, place, 'sky').setup, place, 'sky');
    expect(namesIn(twice.setup)).toEqual(['Sky', 'Painted', 'Sky 2', 'Sky 3']);
    expect(new Set(schemeIn(twice.setup).frames.map(({ id }) => id)).size).toBe(4);
  });

  it('counts in a blend that was written out, and leaves one that takes every frame alone', () => {
    expect(blendIn(addFrame(blended(entry('painted', 2)), place, 'sky').setup)).toEqual([
      ['painted', 2],
      ['sky-2', 1],
    ]);
    expect(blendIn(addFrame(blended(), place, 'sky').setup)).toEqual([]);
  });

  it('counts on the land alone where it is a land frame; those before it go on everywhere', () => {
    const { setup } = addFrame(blended(), place, 'land');
    const { frames } = schemeIn(setup).blend;
    expect(frames.map(({ frameId, where }) => [frameId, where])).toEqual([
      ...schemeIn(stones).frames.map(({ id }) => [id, 'everything']),
      ['land', 'land'],
    ]);
  });

  it('is refused in words beyond as many as the document takes', () => {
    let full = stones;
    while (schemeIn(full).frames.length < mostFrames) full = addFrame(full, place, 'land').setup;
    expect(asFile(full)).toEqual(full);
    expect(() => addFrame(full, place, 'sky')).toThrow(EditRefused);
    expect(() => duplicateFrame(full, place)).toThrow(EditRefused);
  });
});

describe('duplicateFrame', () => {
  it('puts a copy with the lamps after it, and in the blend as often', () => {
    const { setup, frameId } = duplicateFrame(blended(entry('sky'), entry('painted', 3)), place);
    expect(asFile(setup)).toEqual(setup);
    expect(namesIn(setup)).toEqual(['Sky', 'Painted', 'Painted 2']);
    const [original, copy] = ['painted', frameId].map((id) => frameIn(setup, id));
    expect({ ...copy, id: original?.id, name: original?.name }).toEqual(original);
    expect(blendIn(setup)).toEqual([
      ['sky', 1],
      ['painted', 3],
      [frameId, 3],
    ]);
    const half = Array.from({ length: 33 }, () => entry('painted'));
    expect(() => duplicateFrame(blended(...half), place)).toThrow(/would have 66 entries/);
  });
});

describe('renameFrame', () => {
  it('takes one line of at most 80 characters, and no empty name', () => {
    expect(namesIn(renameFrame(stones, place, '  Left\nside '))).toEqual(['Sky', 'Left side']);
    expect(renameFrame(stones, place, ' \n ')).toBe(stones);
    expect(renameFrame(stones, place, 'Painted')).toBe(stones);
    const long = renameFrame(stones, place, 'x'.repeat(200));
    expect(asFile(long)).toEqual(long);
  });
});

describe('moveFrame', () => {
  it('changes the order in which they are exposed, and nothing at the ends', () => {
    expect(namesIn(moveFrame(stones, place, 0))).toEqual(['Painted', 'Sky']);
    expect(moveFrame(stones, place, 5)).toBe(stones);
    expect(moveFrame(stones, { ...place, frameId: 'sky' }, -1)).toBe(stones);
  });
});

describe('removeFrame', () => {
  it('takes its entries out of the blend with it', () => {
    const removed = removeFrame(blended(entry('sky'), entry('painted'), entry('sky', 2)), { ...place, frameId: 'sky' });
    expect(blendIn(removed)).toEqual([['painted', 1]]);
    expect(asFile(removed)).toEqual(removed);
  });

  it('is refused in words where the blend takes that frame alone: an empty list would take all the others', () => {
    const alone = blended(entry('painted'), entry('painted', 2));
    expect(() => removeFrame(alone, place)).toThrow(/“Painted”.*blend/);
    expect(namesIn(removeFrame(alone, { ...place, frameId: 'sky' }))).toEqual(['Painted']);
  });

  it('leaves the last one, and a setup without such a frame as it is', () => {
    const one = removeFrame(stones, place);
    expect(namesIn(one)).toEqual(['Sky']);
    expect(removeFrame(one, { ...place, frameId: 'sky' })).toBe(one);
    expect(removeFrame(stones, { ...place, frameId: 'gone' })).toBe(stones);
  });

  it('keeps a lesson from asking for the shadow of a lamp that is gone', () => {
    const lesson = parseSetup(readFileSync('assets/setups/lesson-flat-to-relief.json', 'utf8'));
    const asking = (setup: Setup) => setup.lesson?.steps.filter(({ predict }) => predict !== null) ?? [];
    const schemeId = asking(lesson)[0]?.schemeIds[0] as string;
    const removed = removeFrame(lesson, { schemeId, frameId: 'painted' });
    expect(asking(removed).length).toBeLessThan(asking(lesson).length);
    expect(removed.lesson?.steps.length).toBe(lesson.lesson?.steps.length);
    expect(asFile(removed)).toEqual(removed);
  });
});
