import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { bestDose } from '../../../core/readings/key-to-fill.ts';
import { readingSamples } from '../../../core/readings/reading-samples.ts';
import { rimReading } from '../../../core/readings/rim-reading.ts';
import { sightOf } from '../../../core/readings/sight.ts';
import { meterWith } from '../../../core/trace/meter.ts';
import type { PathPoint, Source } from '../../../core/world/world.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

type LampSource = Extract<Source, { kind: 'lamp' }>;

/** A lamp walked along z from one place to another in 8 s, looking straight at the wall before it. */
const walkedAlong = (fromX: number, toX: number, y: number, z: number, wallZ: number): LampSource => {
  const at = (x: number, seconds: number): PathPoint => ({ seconds, position: [x, y, z], aim: [x, y, wallZ] });
  const lamp = standing([fromX, y, z], [fromX, y, wallZ], discEmitter(0, halfSpaceBeam));
  return { ...lamp, path: [at(fromX, 0), at(toX, 8)], onOff: [0, 8] };
};
const lamp = standing([0, 1, 1], [0, 1, 0], discEmitter(0.1));

describe('readingSamples', () => {
  it('are few for what rests, put down again at its place or not, and many for what is walked or turned', () => {
    const [first] = lamp.path as [PathPoint];
    const at = (change: Partial<PathPoint>): LampSource => ({
      ...lamp,
      path: [first, { ...first, seconds: 1, ...change }],
    });
    const moon: Source = { kind: 'moon', toward: [0, 1, 0], radiusRadians: 0.0045 };
    expect([lamp, at({}), moon].map((source) => readingSamples(source).length)).toEqual([4, 4, 4]);
    for (const source of [at({ position: [0, 2, 1] }), at({ aim: [0, 0.5, 0] })])
      expect(readingSamples(source).length).toBeGreaterThanOrEqual(32);
  });

  it('of a walk stand in even steps of its time (abs 1e-12)', () => {
    const samples = readingSamples(walkedAlong(-1, 1, 1, 1, 0));
    samples.forEach(({ time }, i) => {
      expect(time).toBeCloseTo((i + 0.5) / samples.length, 12);
    });
  });
});

describe('a lamp walked past a wall', () => {
  const [y, wallZ] = [20, -6];
  const wall = { kind: 'box', position: [0, -wallZ + 0.2, y - 1], widthMetres: 8, depthMetres: 0.4, heightMetres: 2 };
  const stage = stageWith(subjectOf('wall', [wall]));
  const view = cameraView({
    position: [0, y, 14],
    aim: [0, y, wallZ],
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm: 50,
  });
  const sight = sightOf(stage, view);

  // a hundred metres at an arm's length: half-way through it is far brighter than on the whole
  it('a hundred metres long lights all that it passes, the middle too', () => {
    const source = walkedAlong(-50, 50, y, wallZ + 0.5, wallZ);
    const { litShare } = rimReading(stage, sight.silhouette(0), source);
    expect(litShare).toBe(1);
  });

  it('out and back in the same time gives the same best dose (rel 1 %)', () => {
    const out = walkedAlong(-6, 6, y, wallZ + 1, wallZ);
    const [a, b] = out.path as [PathPoint, PathPoint];
    const back = { ...out, path: [a, { ...b, seconds: 4 }, { ...a, seconds: 8 }] };
    const [once, twice] = [out, back].map((source) =>
      bestDose([[{ strength: [1, 1, 1], seconds: 8 }, sight.faceLight(0, source)]]),
    ) as [number, number];
    expect(Math.abs(once / twice - 1)).toBeLessThanOrEqual(0.01);
  });
});

/** Ways all round, evenly (golden spiral over the ball). */
const waysRound = Array.from({ length: 200 }, (_, i): Vec3 => {
  const [up, around] = [1 - (2 * i + 1) / 200, i * Math.PI * (3 - Math.sqrt(5))];
  const level = Math.sqrt(1 - up * up);
  return [level * Math.cos(around), up, level * Math.sin(around)];
});

describe('an open sky of 1 lx', () => {
  const sky: Source = { kind: 'sky' };
  const stage = stageWith();
  const luxOn = (normal: Vec3): number => {
    const place: Vec3 = [0, 2, 0];
    return meterWith(stage, sky, { place, shadowOrigin: place, normal }, readingSamples(sky));
  };

  // an even dome's share above a surface that leans: E = (1 + n_y) / 2, closed form of Lambert's law over the half sphere
  it('gives a surface that faces n: (1 + n_y) / 2 lx (abs 0.05, RMS 0.02: 64 rays)', () => {
    const errors = waysRound.map((normal) => luxOn(normal) - (1 + normal[1]) / 2);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(0.05);
    expect(Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length)).toBeLessThanOrEqual(0.02);
  });

  it('gives level ground 1 lx (abs 1e-12), a ceiling none, an upright wall half of it (abs 0.03)', () => {
    expect(luxOn([0, 1, 0])).toBeCloseTo(1, 12);
    expect(luxOn([0, -1, 0])).toBe(0);
    for (let i = 0; i < 24; i++) {
      const a = (i / 24) * 2 * Math.PI;
      expect(Math.abs(luxOn([Math.cos(a), 0, Math.sin(a)]) - 0.5)).toBeLessThanOrEqual(0.03);
    }
  });
});
