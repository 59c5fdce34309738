import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutCounts } from '../../../app/web/frames/cut-counts.ts';
import {
  changeLikeFrames,
  makeExposureAlike,
  makeLensSchemes,
  makeLowAndHighSchemes,
  moveScheme,
} from '../../../app/web/state/edits/compare-edits.ts';
import { removeScheme, setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import {
  cameraOf,
  dropOwnCamera,
  giveOwnCamera,
  sameSizeCamera,
  setFocalLengthSameSize,
} from '../../../app/web/state/edits/place-edits.ts';
import { type CameraView, cameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import { add, distance, scale } from '../../../core/geometry/vec.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Camera, Frame, Setup } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const ids = stones.schemes.map(({ id }) => id);
const painted = { schemeId: 'side', frameId: 'painted' };
const frameOf = (setup: Setup, schemeId: string, frameId = 'painted'): Frame =>
  setup.schemes.find(({ id }) => id === schemeId)?.frames.find(({ id }) => id === frameId) as Frame;
/** It comes back from its file as it is. */
const expectValid = (setup: Setup) => expect(parseSetup(formatSetup(setup))).toEqual(setup);

const viewOf = ({ position, aim, rollDegrees, sensor, focalLengthMm }: Camera): CameraView =>
  cameraView({
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
    rollRadians: (rollDegrees * Math.PI) / 180,
    sensorWidthMm: sensor.widthMm,
    sensorHeightMm: sensor.heightMm,
    focalLengthMm,
  });

/** Length in the picture, in picture heights, of a stick of a metre whose middle is at the aim. */
const stickSize = (camera: Camera, direction: 'upright in the picture' | 'across' | 'plumb'): number => {
  const view = viewOf(camera);
  const along = { 'upright in the picture': view.up, across: view.right, plumb: [0, 1, 0] as const }[direction];
  const aim = worldFromDocument(camera.aim);
  const ends = [-0.5, 0.5].map((half) => projectPoint(view, add(aim, scale(along, half))) as readonly [number, number]);
  const [a, b] = ends as [readonly [number, number], readonly [number, number]];
  const aspect = view.tanHalfWidth / view.tanHalfHeight;
  return Math.hypot((a[0] - b[0]) * aspect, a[1] - b[1]);
};

describe('another lens with the subject kept the same size', () => {
  const lens = fc.integer({ min: 14, max: 200 });

  it('a stick square to the view at the aim keeps its size for any two lenses, height and bearing kept (rel 1e-9)', () => {
    const place = fc.record({
      east: fc.double({ min: -20, max: 20, noNaN: true }),
      north: fc.double({ min: -20, max: -3, noNaN: true }),
      up: fc.double({ min: 0.1, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(place, lens, lens, ({ east, north, up }, before, after) => {
        const camera: Camera = {
          ...stones.camera,
          position: [east, north, up],
          aim: [0, 0, 1.2],
          focalLengthMm: before,
        };
        const moved = sameSizeCamera(camera, after);
        if (!moved) {
          // only where the lens would have to stand nearer than the aim is higher or lower
          expect((Math.hypot(east, north, up - 1.2) * after) / before).toBeLessThan(Math.abs(up - 1.2) + 1e-3);
          return;
        }
        for (const way of ['upright in the picture', 'across'] as const)
          expect(Math.abs(stickSize(moved, way) / stickSize(camera, way) - 1)).toBeLessThan(1e-9);
        expect(moved.position[2]).toBe(up);
        expect(moved.position[0] * north - moved.position[1] * east).toBeCloseTo(0, 6);
        expect(moved.position[1]).toBeLessThan(0);
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it('a plumb stick keeps its size from a camera as high as the aim (rel 1e-9); 24 to 48 mm is twice as far', () => {
    const camera: Camera = { ...stones.camera, position: [1, -2, 1.35] };
    for (const mm of [24, 35, 48, 85, 200]) {
      const moved = sameSizeCamera(camera, mm) as Camera;
      expect(Math.abs(stickSize(moved, 'plumb') / stickSize(camera, 'plumb') - 1)).toBeLessThan(1e-9);
    }
    const far = sameSizeCamera(camera, 48) as Camera;
    const [near, twice] = [camera, far].map(({ position, aim }) => distance(position, aim)) as [number, number];
    expect(twice / near).toBeCloseTo(2, 12);
  });

  it('is refused straight above the aim, nearer than the aim is high, and outside the world', () => {
    expect(sameSizeCamera({ ...stones.camera, position: [0.2, 8, 4] }, 50)).toBeNull();
    expect(sameSizeCamera({ ...stones.camera, position: [0.2, 6, 4] }, 12)).toBeNull();
    expect(sameSizeCamera({ ...stones.camera, focalLengthMm: 3, position: [0.2, -2990, 2] }, 12)).toBeNull();
    const above: Setup = { ...stones, camera: { ...stones.camera, position: [0.2, 8, 4] } };
    expect(setFocalLengthSameSize(above, 'side', 50)).toBe(above);
  });

  it('goes to a camera of the scheme’s own and leaves the setup’s; dropping it gives the setup’s back', () => {
    const next = setFocalLengthSameSize(stones, 'side', 85);
    expect(cameraOf(next, 'side').focalLengthMm).toBe(85);
    expect(next.camera).toBe(stones.camera);
    expect(cameraOf(next, 'front')).toBe(stones.camera);
    expectValid(next);
    expect(cameraOf(dropOwnCamera(next, 'side'), 'side')).toBe(stones.camera);
    const given = giveOwnCamera(stones, 'side');
    expect(given.schemes[0]?.camera).toEqual(stones.camera);
    expect(giveOwnCamera(given, 'side')).toBe(given);
    expect(dropOwnCamera(stones, 'side')).toBe(stones);
  });
});

describe('schemes made for comparing', () => {
  it('three lenses: three schemes after the present one, each with its own camera and the aim as large (rel 1e-9)', () => {
    const made = makeLensSchemes(stones, 'side');
    expect(made.setup.schemes.slice(1, 4).map(({ id }) => id)).toEqual(made.schemeIds);
    expect(made.setup.schemes.slice(1, 4).map(({ name }) => name)).toEqual(
      ['24 mm', '50 mm', '85 mm'].map((lens) => `Side · ${lens}`),
    );
    const sizes = made.schemeIds.map((id) => stickSize(cameraOf(made.setup, id), 'upright in the picture'));
    for (const size of sizes)
      expect(Math.abs(size / stickSize(stones.camera, 'upright in the picture') - 1)).toBeLessThan(1e-9);
    expectValid(made.setup);
  });

  it('low and high: 0.3 m and 2.2 m over the same place, the same aim', () => {
    const made = makeLowAndHighSchemes(stones, 'front');
    const cameras = made.schemeIds.map((id) => cameraOf(made.setup, id));
    expect(cameras.map(({ position }) => position)).toEqual([
      [0, 0, 0.3],
      [0, 0, 2.2],
    ]);
    for (const { aim } of cameras) expect(aim).toEqual(stones.camera.aim);
    expectValid(made.setup);
  });

  it('nothing is made where there is no room for all of them', () => {
    const scheme = stones.schemes[0] as Setup['schemes'][number];
    const full: Setup = {
      ...stones,
      schemes: Array.from({ length: 22 }, (_, n) => ({ ...scheme, id: n === 0 ? 'side' : `s-${n}` })),
    };
    expect(makeLensSchemes(full, 'side')).toEqual({ setup: full, schemeIds: [] });
    expect(makeLowAndHighSchemes(full, 'side').setup.schemes.length).toBe(24);
  });
});

describe('the order of schemes', () => {
  it('a scheme goes to any place, the others keep their order, and an index past the end is the end', () => {
    const [first, second, third, ...rest] = ids;
    const orderOf = ({ schemes }: Setup) => schemes.map(({ id }) => id);
    expect(orderOf(moveScheme(stones, first as string, 2))).toEqual([second, third, first, ...rest]);
    expect(orderOf(moveScheme(stones, third as string, 0))).toEqual([third, first, second, ...rest]);
    expect(orderOf(moveScheme(stones, first as string, 99)).at(-1)).toBe(first);
    expect(moveScheme(stones, first as string, 0)).toBe(stones);
    expect(moveScheme(stones, 'nobody', 1)).toBe(stones);
  });

  it('a scheme that a lesson shows can be removed: the lesson goes on without it', () => {
    const step = {
      title: 'Look',
      text: 'Look.',
      schemeIds: ['side', 'front'],
      predict: { passId: 'key', subjectId: 'stone-1' },
    };
    const lesson: Setup['lesson'] = { steps: [step, { ...step, schemeIds: ['side'] }] };
    const taught = parseSetup(formatSetup({ ...stones, lesson }));
    const next = removeScheme(taught, 'side');
    expect(next.lesson?.steps).toEqual([{ ...step, schemeIds: ['front'], predict: null }]);
    expectValid(next);
    expect(removeScheme(next, 'front').lesson).toBeNull();
    expect(removeScheme(taught, 'back').lesson).toBe(taught.lesson);
  });
});

describe('exposure of compared schemes', () => {
  const setIso = (setup: Setup, place: typeof painted) => setFrameNumber(setup, place, 'iso', 1600);

  it('one change reaches the like frame of every scheme named, and no other frame or scheme', () => {
    const next = changeLikeFrames(stones, painted, ['side', 'back'], setIso);
    expect(['side', 'front', 'back'].map((id) => frameOf(next, id).iso)).toEqual([1600, 400, 1600]);
    expect(frameOf(next, 'side', 'sky')).toBe(frameOf(stones, 'side', 'sky'));
    expectValid(next);
    expect(changeLikeFrames(stones, { ...painted, frameId: 'none' }, ids, setIso)).toBe(stones);
  });

  it('a like frame is one of the same purpose where ids differ; a scheme without one is left alone', () => {
    const odd: Setup = {
      ...stones,
      schemes: stones.schemes.map((scheme) => {
        if (scheme.id === 'front') return { ...scheme, frames: scheme.frames.map((f) => ({ ...f, id: `${f.id}-2` })) };
        return scheme.id === 'back' ? { ...scheme, frames: scheme.frames.filter(({ id }) => id === 'sky') } : scheme;
      }),
    };
    const next = changeLikeFrames(odd, painted, ids, setIso);
    expect(frameOf(next, 'front', 'painted-2').iso).toBe(1600);
    expect(next.schemes.find(({ id }) => id === 'back')).toBe(odd.schemes.find(({ id }) => id === 'back'));
  });

  it('made alike, all have the present one’s exposure, white balance and focus, and their own light', () => {
    const front = { schemeId: 'front', frameId: 'painted' };
    let odd = setFrameNumber(setFrameNumber(stones, front, 'aperture', 5.6), front, 'seconds', 2.5);
    odd = setFrameNumber(odd, painted, 'focusMetres', 7.53342);
    const next = makeExposureAlike(odd, 'side', ids);
    // the delay is as long as the walk to the lamp takes in each
    const settings = ({ passes: _, delaySeconds: __, ...rest }: Frame) => rest;
    for (const id of ['front', 'back'])
      for (const frame of ['sky', 'painted'])
        expect(settings(frameOf(next, id, frame))).toEqual(settings(frameOf(odd, 'side', frame)));
    expect(frameOf(next, 'front').passes[0]?.waypoints).toEqual(frameOf(stones, 'front').passes[0]?.waypoints);
    expect(frameOf(next, 'front').delaySeconds).toBe(frameOf(stones, 'front').delaySeconds);
    expect(next.schemes[0]).toBe(odd.schemes[0]);
    expectValid(next);
  });

  it('a shutter shorter than the counts names each of them', () => {
    const frame = frameOf(stones, 'side');
    expect(cutCounts(stones, frame, ['side'], 5)).toEqual(['Key from 8 s']);
    expect(cutCounts(stones, frame, ['side', 'front'], 5)).toEqual(['Key of Side from 8 s', 'Key of Front from 8 s']);
    expect(cutCounts(stones, frame, ['side'], 8)).toEqual([]);
  });
});
