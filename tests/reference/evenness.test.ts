import { describe, it } from 'vitest';
import { cameraView } from '../../core/camera/camera-view.ts';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { evennessReading } from '../../core/readings/evenness-reading.ts';
import { faceLight } from '../../core/readings/face-light.ts';
import { silhouetteOf } from '../../core/readings/silhouette.ts';
import { meanMoonRadiusRadians } from '../../core/world/world.ts';
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
    const moon = { kind: 'moon', toward: [0, 0.6, 0.8], radiusRadians: meanMoonRadiusRadians } as const;
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

/** A wall 8 x 2 m, high over the ground; a bare bulb is walked along it, 1 m off, from 2 m before its one end to 2 m past the other. */
describe('a lamp walked past a wall', () => {
  const [halfWide, halfHigh, halfWay, away] = [4, 1, 6, 1];
  const wall = subjectOf('wall', [
    { kind: 'box', position: [0, 0.2, up - halfHigh], widthMetres: 8, depthMetres: 0.4, heightMetres: 2 },
  ]);
  const wallStage = stageWith(wall);
  const lens = { rollRadians: 0, sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm: 50 };
  const seen = silhouetteOf(wallStage, cameraView({ position: [0, up, 20], aim: [0, up, 0], ...lens }), 0);
  const at = (x: number, seconds: number) => ({ seconds, position: [x, up, away] as Vec3, aim: [x, up, 0] as Vec3 });
  const bulb = standing([0, up, away], [0, up, 0], barePoint());
  const walked = { ...bulb, path: [at(-halfWay, 0), at(halfWay, 12)], onOff: [0, 12] as const };
  const light = faceLight(wallStage, seen.face, walked);

  /** Mean over the way of I d / r^3 for 1 lm all round: the integral of d / (t^2 + p^2)^(3/2) is d t / (p^2 sqrt(t^2 + p^2)). */
  const meanLux = (x: number, y: number): number => {
    const squared = away ** 2 + y ** 2;
    const upTo = (t: number) => (away * t) / (squared * Math.sqrt(t ** 2 + squared));
    return (upTo(halfWay - x) - upTo(-halfWay - x)) / (4 * Math.PI * 2 * halfWay);
  };

  it('5th to 95th percentile of the light on it is that of the mean over its way (abs 0.05)', () => {
    // an even grid over the wall, as rays from straight in front are
    const exact = Array.from({ length: 200 * 50 }, (_, k) =>
      meanLux((((k % 200) + 0.5) / 100 - 1) * halfWide, ((Math.floor(k / 200) + 0.5) / 25 - 1) * halfHigh),
    ).sort((a, b) => a - b);
    check({
      id: 'evenness',
      claim: 'wall 8 x 2 m, bulb walked 12 m along it, 1 m off: 5th to 95th percentile of light on it',
      source: 'inverse square and cosine laws, integral over the way in closed form',
      unit: 'stops',
      expected: Math.log2((exact[9500] as number) / (exact[500] as number)),
      ours: evennessReading(seen, light, walked).evennessStops ?? Number.NaN,
      // a row of the rays stands for a twenty-eighth of the wall's height
      tolerance: { absolute: 0.05 },
    });
  });

  it('the worst point of it gets what the integral gives (rel 0.5 %)', () => {
    const errors = light.map(({ point: { place }, lux }) => lux / meanLux(place[0], place[1] - up));
    check({
      id: 'evenness',
      claim: 'wall 8 x 2 m, bulb walked 12 m along it, 1 m off: light over its closed form, worst point',
      source: 'inverse square and cosine laws, integral over the way in closed form',
      unit: '',
      expected: 1,
      ours: errors.reduce((worst, each) => (Math.abs(each - 1) > Math.abs(worst - 1) ? each : worst), 1),
      tolerance: { absolute: 0.005 },
    });
  });
});
