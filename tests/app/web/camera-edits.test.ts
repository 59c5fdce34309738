import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setCameraHeight, walkCamera } from '../../../app/web/state/edits/camera-placing.ts';
import { focusAt, setTint } from '../../../app/web/state/edits/frame-edits.ts';
import {
  aimCamera,
  cameraOf,
  changeCamera,
  giveOwnCamera,
  moveCamera,
  setDrawn,
  setSensor,
} from '../../../app/web/state/edits/place-edits.ts';
import { setBounces, setNightLevel } from '../../../app/web/state/edits/setup-edits.ts';
import { unsharpWords } from '../../../app/web/ui/depth-words.ts';
import { parseStops } from '../../../app/web/ui/parse-stops.ts';
import { metresText, percentText } from '../../../app/web/ui/words.ts';
import { burntWords } from '../../../app/web/viewfinder/burnt-words.ts';
import { hyperfocalMm } from '../../../core/camera/depth-of-field.ts';
import { sensorPresets } from '../../../core/camera/sensors.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { stageOf } from '../../../core/world/stage.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const place = { schemeId: 'side', frameId: 'painted' };
const frameOf = (setup: Setup) => setup.schemes[0]?.frames[1] as Setup['schemes'][number]['frames'][number];

describe('edits of camera and sensor', () => {
  it('a sensor changes its own numbers only, pixels are made whole, and the stage is shared', () => {
    const next = setSensor(stones, 'side', { widthMm: 23.5, pixelsWide: 6000.4 });
    expect(cameraOf(next, 'side').sensor).toEqual({ ...stones.camera.sensor, widthMm: 23.5, pixelsWide: 6000 });
    expect(cameraOf(next, 'side').focalLengthMm).toBe(stones.camera.focalLengthMm);
    expect(stageOf(next)).toBe(stageOf(stones));
  });

  it('a scheme with a camera of its own keeps the setup’s as it is', () => {
    const own: Setup = {
      ...stones,
      schemes: stones.schemes.map((scheme) => (scheme.id === 'front' ? { ...scheme, camera: stones.camera } : scheme)),
    };
    const next = setDrawn(own, 'front', { noise: true });
    expect(cameraOf(next, 'front').drawn).toEqual({ ...stones.camera.drawn, noise: true });
    expect(cameraOf(next, 'side')).toBe(stones.camera);
  });

  it.each(sensorPresets.map(({ name, ...numbers }) => [name, numbers] as const))(
    'the document takes the sensor “%s” and gives it back unchanged',
    (_, numbers) => {
      const next = setSensor(stones, 'side', numbers);
      expect(parseSetup(formatSetup(next)).camera.sensor).toEqual(numbers);
    },
  );
});

describe('edits of the camera that change nothing', () => {
  const own = giveOwnCamera(stones, 'side');
  const { position, aim, sensor, drawn } = stones.camera;
  it.each<[string, (setup: Setup) => Setup]>([
    ['the camera itself', (s) => changeCamera(s, 'side', (camera) => camera)],
    ['a copy with the same numbers', (s) => changeCamera(s, 'side', (camera) => structuredClone(camera))],
    ['moved to its own aim', (s) => moveCamera(s, 'side', aim)],
    ['moved to where it stands', (s) => moveCamera(s, 'side', [...position])],
    ['aimed at its own place', (s) => aimCamera(s, 'side', position)],
    ['the sensor that it has', (s) => setSensor(s, 'side', sensor)],
    ['what is drawn already', (s) => setDrawn(s, 'side', drawn)],
    ['the height that it has', (s) => setCameraHeight(s, 'side', position[2])],
    ['walked out of the world', (s) => walkCamera(s, 'side', 99_999, 0)],
  ])('%s: the same setup, so that what could be redone is kept', (_, edit) => {
    expect(edit(stones)).toBe(stones);
    expect(edit(own)).toBe(own);
  });
});

describe('focusing a frame', () => {
  it('null is the farthest that the document takes; nearer than the nearest is held at it', () => {
    expect(frameOf(focusAt(stones, place, null)).focusMetres).toBe(10000);
    expect(frameOf(focusAt(stones, place, 0.001)).focusMetres).toBe(0.05);
  });

  it('is rounded up to a millimetre at most, so that the hyperfocal distance still reaches infinity', () => {
    const hyperfocalMetres = hyperfocalMm(24, 8, 0.03) / 1000;
    const { focusMetres } = frameOf(focusAt(stones, place, hyperfocalMetres));
    expect(focusMetres).toBeGreaterThanOrEqual(hyperfocalMetres);
    expect(focusMetres - hyperfocalMetres).toBeLessThanOrEqual(0.001);
  });

  it('where it already is changes nothing, so that no step is added to the history', () => {
    const focused = focusAt(stones, place, 4.6);
    expect(focusAt(focused, place, 4.6)).toBe(focused);
    expect(setBounces(stones, stones.bounces)).toBe(stones);
    expect(setNightLevel(stones, stones.nightLevelStops)).toBe(stones);
  });
});

describe('any run of camera edits', () => {
  const edit: fc.Arbitrary<(setup: Setup) => Setup> = fc.oneof(
    fc.double({ min: 0.001, max: 20000, noNaN: true }).map((v) => (s: Setup) => focusAt(s, place, v)),
    fc.double({ min: -5, max: 5, noNaN: true }).map((v) => (s: Setup) => setTint(s, place, v)),
    fc.integer({ min: 0, max: 2 }).map((v) => (s: Setup) => setBounces(s, v)),
    fc.double({ min: -4, max: 1, noNaN: true }).map((v) => (s: Setup) => setNightLevel(s, v)),
    fc.double({ min: 1, max: 120, noNaN: true }).map((v) => (s: Setup) => setSensor(s, 'side', { heightMm: v })),
    fc
      .double({ min: 100, max: 30000, noNaN: true })
      .map((v) => (s: Setup) => setSensor(s, 'side', { pixelsWide: v, pixelsHigh: v })),
    fc.boolean().map((v) => (s: Setup) => setDrawn(s, 'side', { focusBlur: v, vignetting: !v })),
    fc.constant((s: Setup) => setDrawn(s, 'side', { response: 'plain' })),
    fc.constant((s: Setup) => changeCamera(s, 'side', (c) => ({ ...c, sharpness: 'pixel' }))),
  );

  it('leaves a setup that can be saved and read back unchanged (200 runs, seed 11)', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 8 }), (edits) => {
        const edited = edits.reduce((setup, apply) => apply(setup), stones);
        expect(parseSetup(formatSetup(edited))).toEqual(edited);
      }),
      { numRuns: 200, seed: 11 },
    );
  });
});

describe('the words under the picture', () => {
  it.each([
    ['-1.5', -1.5],
    ['−1.5 stops', -1.5],
    ['+1/3', 1 / 3],
    ['0', 0],
    ['-0', 0],
    ['1,5', 1.5],
    ['two', null],
    ['1/0', null],
    ['-', null],
  ])('stops typed as "%s" are read as %s', (text, stops) => {
    expect(parseStops(text)).toBe(stops);
  });

  it('shares and lengths keep the figures that matter', () => {
    expect([0, 0.0002, 0.0044, 0.031, 1].map(percentText)).toEqual(['0 %', 'under 0.1 %', '0.4 %', '3 %', '100 %']);
    expect([0.354, 4.84, 20.4, null].map(metresText)).toEqual(['0.35 m', '4.8 m', '20 m', 'infinity']);
  });

  it('burnt channels come worst first; frames are named where there are several', () => {
    const none = { red: 0, green: 0, blue: 0 };
    const burnt = { red: 0.03, green: 0.05, blue: 0 };
    expect(burntWords([{ name: 'Painted', clipped: burnt }])).toBe('Burnt: green 5 %, red 3 %');
    expect(
      burntWords([
        { name: 'Sky', clipped: none },
        { name: 'Painted', clipped: burnt },
      ]),
    ).toBe('Burnt in Painted: green 5 %, red 3 %');
    expect(burntWords([{ name: 'Sky', clipped: none }])).toBe('nothing burnt');
  });

  it('says which end is not sharp, and nothing when both are', () => {
    const depth = { nearMetres: 2, farMetres: 9, nearestMetres: 3, farthestMetres: 8 };
    expect(unsharpWords(depth)).toBeNull();
    expect(unsharpWords({ ...depth, nearestMetres: 1.5 })).toBe('Not sharp: the nearest thing, 1.5 m off');
    expect(unsharpWords({ ...depth, farthestMetres: 12 })).toBe('Not sharp: the farthest thing, 12 m off');
    expect(unsharpWords({ ...depth, farthestMetres: null })).toBe('Not sharp: what is at infinity');
    expect(unsharpWords({ ...depth, nearestMetres: 1, farthestMetres: 12 })).toMatch(/nearest.*and the farthest/);
    expect(unsharpWords({ ...depth, farMetres: null, farthestMetres: null })).toBeNull();
    expect(unsharpWords({ ...depth, nearestMetres: null })).toBeNull();
  });
});
