import { describe, expect, it } from 'vitest';
import {
  cameraThatShows,
  isPortrait,
  lowCamera,
  setCameraHeight,
  setPortrait,
  turnCamera,
  walkCamera,
} from '../../../app/web/state/edits/camera-placing.ts';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import { sensorName } from '../../../core/camera/sensors.ts';
import { horizonLine } from '../../../core/camera/turn-camera.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Camera, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

const setup = onePassSetup({
  camera: { position: [1, -2, 1.2], aim: [1, 8, 0.9] },
  pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
});
const viewOf = (of: Setup) => buildWorld(of, of.schemes[0] as Setup['schemes'][number]).view;
const apart = (a: Camera['position'], b: Camera['position']) => a.map((v, i) => (b[i] as number) - v);

describe('walkCamera', () => {
  it('moves camera and aim alike, level, along the look and to its right (0.1 mm)', () => {
    const ahead = walkCamera(setup, 'scheme', 2, 0).camera;
    expect(ahead.position).toEqual([1, 0, 1.2]);
    expect(apart(setup.camera.aim, ahead.aim).map((v) => Math.round(v * 1e4) / 1e4)).toEqual([0, 2, 0]);
    expect(walkCamera(setup, 'scheme', 0, 3).camera.position).toEqual([4, -2, 1.2]);
  });

  it('stays where the document ends', () => {
    expect(walkCamera(setup, 'scheme', 9000, 0)).toEqual(setup);
  });
});

describe('turnCamera', () => {
  it('pans to the east by 90 degrees and keeps the distance that it looks at (1 mm)', () => {
    const { position, aim } = turnCamera(setup, 'scheme', 90, 0).camera;
    expect(aim[0] - position[0]).toBeCloseTo(10, 3);
    expect(aim[1] - position[1]).toBeCloseTo(0, 3);
  });
});

describe('setCameraHeight', () => {
  it('lifts the lens and goes on looking at the same place', () => {
    const { position, aim } = setCameraHeight(setup, 'scheme', 0.5).camera;
    expect(position).toEqual([1, -2, 0.5]);
    expect(aim).toEqual(setup.camera.aim);
  });
});

describe('cameraThatShows', () => {
  it('brings a place to a third of the picture, to a thousandth of it', () => {
    const camera = cameraThatShows(setup.camera, [4, 2, -9], 1 / 3, 2 / 3) as Camera;
    const [x, y] = projectPoint(viewOf({ ...setup, camera }), [4, 2, -9]) as readonly [number, number];
    expect(Math.abs(x - 1 / 3)).toBeLessThan(1e-3);
    expect(Math.abs(y - 2 / 3)).toBeLessThan(1e-3);
  });

  it('says that the place of the camera itself can’t be shown', () => {
    expect(cameraThatShows(setup.camera, [1, 1.2, 2], 0.5, 0.5)).toBeNull();
  });
});

describe('setPortrait', () => {
  it('exchanges width and height, is still the same sensor, and comes back to the start', () => {
    const upright = setPortrait(setup, 'scheme', true);
    expect(isPortrait(upright.camera)).toBe(true);
    expect(upright.camera.sensor).toMatchObject({ widthMm: 24, heightMm: 36, pixelsWide: 4000, pixelsHigh: 6000 });
    expect(sensorName(upright.camera.sensor)).toBe('full frame');
    expect(setPortrait(upright, 'scheme', false)).toEqual(setup);
    expect(setPortrait(upright, 'scheme', true)).toEqual(upright);
  });
});

describe('lowCamera', () => {
  it('stands 0.3 m over the ground with the horizon level on the lower third (1e-3)', () => {
    const low = lowCamera(setup, 'scheme');
    expect(low.camera.position).toEqual([1, -2, 0.3]);
    const [left, right] = horizonLine(viewOf(low)) as readonly [number, number];
    expect(Math.abs(left - 2 / 3)).toBeLessThan(1e-3);
    expect(Math.abs(right - left)).toBeLessThan(1e-9);
    expect(parseSetup(formatSetup(low))).toEqual(low);
  });

  it('stands over the rock that the camera stands on, not over the ground under it', () => {
    const parts = [{ kind: 'box', widthMetres: 2, depthMetres: 2, heightMetres: 1 }];
    const rock = { id: 'rock', name: 'Rock', position: [1, -2, 0], parts };
    const onRock = onePassSetup({
      camera: { position: [1, -2, 2.5], aim: [1, 8, 0.9] },
      pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
      subjects: [rock],
    });
    expect(lowCamera(onRock, 'scheme').camera.position).toEqual([1, -2, 1.3]);
  });

  it.each<[string, Camera['position']]>([
    ['down', [1, -2, 0]],
    ['up', [1, -2, 90]],
  ])('straight %s there is no way to look level: it is refused in a sentence', (word, aim) => {
    const plumb = { ...setup, camera: { ...setup.camera, aim } };
    expect(() => lowCamera(plumb, 'scheme')).toThrow(EditRefused);
    expect(() => lowCamera(plumb, 'scheme')).toThrow(`straight ${word}`);
  });

  it('is refused where its aim would come to lie past the edge of the world', () => {
    // level, as far as before: 80 m up over 60 m, so 100 m, of which only 60 are left
    const edge = { ...setup, camera: { ...setup.camera, position: [4940, 0, 80], aim: [5000, 0, 0] } } as Setup;
    expect(() => lowCamera(edge, 'scheme')).toThrow(EditRefused);
  });
});
