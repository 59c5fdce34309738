import { describe, it } from 'vitest';
import { cameraView } from '../../core/camera/camera-view.ts';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { evennessReading } from '../../core/readings/evenness-reading.ts';
import { faceLight } from '../../core/readings/face-light.ts';
import { silhouetteOf } from '../../core/readings/silhouette.ts';
import { stageWith, standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import { barePoint } from './support/lamps.ts';

const { check } = accuracySection('Evenness over a subject');

/** A strip 3 m deep along the light's way, low, seen from the side, its face to the south, high over the ground. */
const [deep, high, up] = [3, 0.02, 10];
const strip = subjectOf('strip', [
  { kind: 'box', position: [deep / 2, 0.005, up - high / 2], widthMetres: deep, depthMetres: 0.01, heightMetres: high },
]);
const stage = stageWith(strip);
const view = cameraView({
  position: [deep / 2, up, 12],
  aim: [deep / 2, up, 0],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 85,
});
const silhouette = silhouetteOf(stage, view, 0);

/** A bare bulb before the near end, a hand's breadth in front of the face's plane. */
const asideMetres = 0.3;
const readFrom = (awayMetres: number) => {
  const position: Vec3 = [-awayMetres, up, asideMetres];
  const lamp = standing(position, [deep / 2, up, 0], barePoint());
  return evennessReading(silhouette, faceLight(stage, silhouette.face, lamp), lamp);
};

const distances = [
  [1, 4.0],
  [2, 2.6],
  [3, 2.0],
  [5, 1.4],
  [8, 0.9],
  [15, 0.5],
] as const;

describe('a subject 3 m deep', () => {
  it.each(distances)(
    'lit from %d m in front of its near end: %d stops by distance alone (the rounding)',
    (away, stops) => {
      const lamp = standing([-away, up, 0.005], [deep, up, 0], barePoint());
      check({
        id: 'trade 2.7',
        claim: `subject 3 m deep, lamp ${away} m off: fall-off by distance alone, traced outline`,
        source: 'inverse square law',
        unit: 'stops',
        expected: stops,
        ours: evennessReading(silhouette, faceLight(stage, silhouette.face, lamp), lamp).fallOffStops ?? Number.NaN,
        tolerance: { absolute: 0.05 },
      });
    },
  );

  it.each(distances)('bulb %d m off and 0.3 m aside: from the 5th to the 95th part of its length (rel 2 %)', (away) => {
    // E = I a / (x^2 + a^2)^(3/2) on a face that the lamp stands a in front of; rays are even along it
    const squared = (share: number) => (away + share * deep) ** 2 + asideMetres ** 2;
    check({
      id: 'evenness',
      claim: `strip 3 m long, lamp ${away} m off and 0.3 m aside: 5th to 95th percentile of light on it`,
      source: 'inverse square and cosine laws, closed form',
      unit: 'stops',
      expected: 1.5 * Math.log2(squared(0.95) / squared(0.05)),
      ours: readFrom(away).evennessStops ?? Number.NaN,
      // the rays stand 56 along it, a twentieth is 2.8 of them
      tolerance: { relative: 0.02 },
    });
  });

  it('a light at infinity: no fall-off and an even face (exact; abs 1e-9)', () => {
    const moon = { kind: 'moon', toward: [0, 0.6, 0.8] } as const;
    const { fallOffStops, evennessStops } = evennessReading(silhouette, faceLight(stage, silhouette.face, moon), moon);
    const row = { id: 'evenness', source: 'parallel light', unit: 'stops', expected: 0 };
    check({
      ...row,
      claim: 'moonlight on a subject 3 m deep: fall-off',
      ours: fallOffStops ?? Number.NaN,
      tolerance: { absolute: 0 },
    });
    check({
      ...row,
      claim: 'moonlight on a flat face: 5th to 95th percentile',
      ours: evennessStops ?? Number.NaN,
      tolerance: { absolute: 1e-9 },
    });
  });
});
