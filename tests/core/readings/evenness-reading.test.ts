import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import { evennessReading } from '../../../core/readings/evenness-reading.ts';
import { faceLight } from '../../../core/readings/face-light.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import type { Source } from '../../../core/world/world.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

/** A wall whose south face lies at north = 6, and in front of its right half, nearer to the lamp, nothing. */
const wall = { kind: 'box', position: [0, 6.2, 0], widthMetres: 4, depthMetres: 0.4, heightMetres: 3 };
const stage = stageWith(subjectOf('wall', [wall]));
const view = cameraView({
  position: [0, 1.5, 4],
  aim: [0, 1.5, -6],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 50,
});
const silhouette = silhouetteOf(stage, view, 0);
const read = (source: Source) => evennessReading(silhouette, faceLight(stage, silhouette.face, source), source);
const lampAt = (east: number, north: number) =>
  standing([east, 1.5, -north], [east * 0.5, 1.5, -6], discEmitter(0, halfSpaceBeam));

describe('evennessReading', () => {
  it('the farther the lamp, the more even the wall and the less it falls off', () => {
    const readings = [4, 2, -2, -10, -50].map((north) => read(lampAt(-3, north)));
    for (const name of ['evennessStops', 'fallOffStops'] as const) {
      const values = readings.map((reading) => reading[name] ?? Number.NaN);
      expect(values).toEqual([...values].sort((a, b) => b - a));
      expect(values[4]).toBeLessThan(0.2);
    }
  });

  it('fall-off is 2 log2 of farthest over nearest point of the face: 4 m wide, 3 m high, lamp 2 m before its left edge (abs 0.01)', () => {
    // nearest straight before the lamp, farthest the right corners
    const expected = 2 * Math.log2(Math.hypot(4, 1.5, 2) / 2);
    expect(Math.abs((read(lampAt(-2, 4)).fallOffStops ?? Number.NaN) - expected)).toBeLessThanOrEqual(0.01);
  });

  it('does not hang on the lamp’s output or the wall’s grey: it is a ratio of light (exact)', () => {
    const source = lampAt(-3, 2);
    const light = faceLight(stage, silhouette.face, source);
    const grey = light.map((each, i) => ({ ...each, reflectance: i % 2 ? 0.05 : 0.8 }));
    expect(evennessReading(silhouette, grey, source)).toEqual(evennessReading(silhouette, light, source));
  });

  it('a face lit in part is judged by the lit part, and says how much of it that is', () => {
    const post = { kind: 'box', position: [0.6, 4, 0], widthMetres: 0.8, depthMetres: 0.2, heightMetres: 6 };
    const shaded = stageWith(subjectOf('wall', [wall]), subjectOf('post', [post]));
    const seen = silhouetteOf(shaded, view, 0);
    const moon: Source = { kind: 'moon', toward: [0.3, 0.2, Math.sqrt(1 - 0.13)], radiusRadians: 0.0045 };
    const { evennessStops, faceLitShare } = evennessReading(seen, faceLight(shaded, seen.face, moon), moon);
    // an even light stays even outside the shadow
    expect(evennessStops).toBeLessThanOrEqual(1e-9);
    expect(faceLitShare).toBeGreaterThan(0.5);
    expect(faceLitShare).toBeLessThan(0.95);
  });

  it('from behind the wall nothing of the face is lit, yet its distances are known', () => {
    const { evennessStops, fallOffStops, faceLitShare } = read(lampAt(0, 12));
    expect([evennessStops, faceLitShare]).toEqual([null, 0]);
    expect(fallOffStops).toBeGreaterThan(0);
  });

  it('is null all through for a subject that the camera does not see', () => {
    const nothing = { edge: [], face: [], sky: [] };
    expect(evennessReading(nothing, [], lampAt(0, 0))).toEqual({
      evennessStops: null,
      fallOffStops: null,
      faceLitShare: null,
    });
  });
});
