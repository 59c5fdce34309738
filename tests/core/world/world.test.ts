import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { distance } from '../../../core/geometry/vec.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { mixLayers } from '../../../core/trace/picture.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld, type PathPoint, placeOnPath, poseAt, type WorldLight } from '../../../core/world/world.ts';
import { relativeError } from '../support/errors.ts';
import { discEmitter, type OnePass, onePassSetup } from '../support/scenes.ts';

const camera = { position: [0, -6, 1.5], aim: [0, 0, 1] };
const pass = { waypoints: [{ position: [3, 0, 1], aim: [0, 0, 1] }] };
const firstFrame = (what: OnePass) => {
  const setup = onePassSetup(what);
  const frame = buildWorld(setup, setup.schemes[0] as Scheme).frames[0];
  if (!frame) throw new Error('no frame');
  return frame;
};
const lampLight = (what: OnePass) => firstFrame(what).lights[0] as WorldLight;

describe('axes', () => {
  it('east is x, up is y, north is -z, and back', () => {
    expect(worldFromDocument([1, 2, 3])).toEqual([1, 3, -2]);
    expect(documentFromWorld(worldFromDocument([4, -5, 6]))).toEqual([4, -5, 6]);
  });
});

describe('placeOnPath', () => {
  const path: readonly PathPoint[] = [
    { seconds: 1, position: [0, 1, 0], aim: [0, 0, -5] },
    { seconds: 3, position: [4, 1, 0], aim: [0, 0, -5] },
    { seconds: 4, position: [4, 1, -2], aim: [2, 0, -5] },
  ];
  it.each([
    [0, [0, 1, 0]],
    [1, [0, 1, 0]],
    [1.5, [1, 1, 0]],
    [2, [2, 1, 0]],
    [3, [4, 1, 0]],
    [3.5, [4, 1, -1]],
    [9, [4, 1, -2]],
  ] as const)('at %d s stands at %j: even between waypoints, at rest outside', (seconds, position) => {
    expect(distance(placeOnPath(path, seconds).position, position)).toBeLessThanOrEqual(1e-12);
  });
  it('moves the aim along, and poseAt counts from on to off', () => {
    expect(placeOnPath(path, 3.5).aim).toEqual([1, 0, -5]);
    const source = { kind: 'lamp', emitter: discEmitter(0), path, onOff: [1, 3] } as const;
    expect(distance(poseAt(source, 0.25).position, [1, 1, 0])).toBeLessThanOrEqual(1e-12);
    expect(distance(poseAt(source, 1).position, [4, 1, 0])).toBeLessThanOrEqual(1e-12);
  });
});

describe('poseAt', () => {
  it('a lamp carried through what it is aimed at points straight down for that moment', () => {
    const path: readonly PathPoint[] = [
      { seconds: 0, position: [-1, 1, 0], aim: [0, 1, 0] },
      { seconds: 1, position: [1, 1, 0], aim: [0, 1, 0] },
    ];
    const source = { path, onOff: [0, 1] } as const;
    expect(poseAt(source, 0.5)).toEqual({ position: [0, 1, 0], axis: [0, -1, 0] });
    expect(distance(poseAt(source, 0.25).axis, [1, 0, 0])).toBeLessThanOrEqual(1e-12);
    expect(distance(poseAt(source, 0.75).axis, [-1, 0, 0])).toBeLessThanOrEqual(1e-12);
  });
});

describe('buildWorld', () => {
  it('a pass weighs its flux, level and gels: 300 lm at 25 % through 0.5 and 0.8 is 30 lm (rel 1e-12)', () => {
    const gels = [
      { name: 'A', transmission: 0.5, shiftMired: 100 },
      { name: 'B', transmission: 0.8 },
    ];
    const lamp = { output: { from: 'lumens', lumens: 300 } };
    const light = lampLight({ camera, lamp, pass: { ...pass, levelPercent: 25, gels, on: 2, off: 5 } });
    expect(relativeError(luminanceOfLinearSrgb(light.strength), 30)).toBeLessThanOrEqual(1e-12);
    expect(light.seconds).toBe(3);
  });

  it('takes the exact f-number, speed and time behind the marked ones; the sky has the frame’s whole time', () => {
    const frame = firstFrame({ camera, pass, frame: { aperture: 2.8, iso: 5000, seconds: 20 } });
    expect(frame.exposure.fNumber).toBeCloseTo(2 ** 1.5, 12);
    expect(frame.exposure.iso).toBeCloseTo(50 * 2 ** (20 / 3), 9);
    expect(frame.lights.map(({ id }) => id)).toEqual(['pass', 'sky']);
    expect(frame.lights[1]?.seconds).toBeCloseTo(2 ** (13 / 3), 12);
  });
});

// light adds: a picture is the weighted sum of its layers
describe('mixLayers', () => {
  it('is linear: two layers together are the sum of each alone, doubled strength doubles (rel 1e-12)', () => {
    const frame = firstFrame({ camera, pass });
    const size = { width: 2, height: 1, samples: 1 };
    // faint enough that no channel is full
    const layers = frame.lights.map((_, i) => Float64Array.from([0.1, 0.2, 0.3, 1, 0, i], (v) => v * 1e-3 * (i + 1)));
    const traced = (layers: readonly Float64Array[]) => ({ layers, covers: layers.map(() => null) });
    const none = layers.map((layer) => new Float64Array(layer.length));
    const [a, b] = [0, 1].map((only) =>
      mixLayers(frame, traced(layers.map((l, i) => (i === only ? l : (none[i] as Float64Array)))), size),
    ) as [Float64Array, Float64Array];
    const both = mixLayers(frame, traced(layers), size);
    const twice = mixLayers(frame, traced(layers.map((l) => l.map((v) => 2 * v))), size);
    both.forEach((v, p) => {
      const sum = (a[p] as number) + (b[p] as number);
      expect(Math.abs(v - sum)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(sum), 1e-12));
      expect(Math.abs((twice[p] as number) - 2 * v)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(v), 1e-12));
    });
    expect(both.some((v) => v > 0)).toBe(true);
  });
});
