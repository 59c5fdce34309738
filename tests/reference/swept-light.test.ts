import { describe, expect, it } from 'vitest';
import { distance, type Vec3 } from '../../core/geometry/vec.ts';
import { evenDose } from '../../core/passes/even-dose.ts';
import { evenSpeedTimes } from '../../core/passes/even-speed-times.ts';
import { paintBudgetLumenSeconds } from '../../core/readings/count.ts';
import type { Waypoint } from '../../core/setup/schema/setup.ts';
import { meterWith } from '../../core/trace/meter.ts';
import { dimension, sampleNumber } from '../../core/trace/sequence.ts';
import { worldFromDocument } from '../../core/world/axes.ts';
import { emitterOf } from '../../core/world/lamp-light.ts';
import type { Source } from '../../core/world/world.ts';
import { stageWith, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import { barePoint, thousandLumens } from './support/lamps.ts';

const { check } = accuracySection('Swept light');

/** A lamp on its way, at so many even moments of its time. */
const lampOn = (waypoints: readonly Waypoint[], emitter = barePoint()): Source => ({
  kind: 'lamp',
  emitter,
  path: waypoints.map(({ time, position, aim }) => ({
    seconds: time,
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
  })),
  onOff: [0, (waypoints.at(-1) as Waypoint).time],
  holder: null,
});
const moments = (count: number) =>
  Array.from({ length: count }, (_, s) => ({
    u: sampleNumber(s, dimension.emitterU, 0, 0),
    v: sampleNumber(s, dimension.emitterV, 0, 0),
    time: (s + 0.5) / count,
  }));

describe('a bulb carried past a wall, summed over its time', () => {
  const [candela, speed] = [1000, 0.5];
  const stage = stageWith();
  /** Dose per candela on a point high over the ground that faces the track, `away` in front of it. */
  const dose = (away: number, reach: number, count: number): number => {
    const at = (east: number, time: number): Waypoint => ({ time, position: [east, -away, 10], aim: [east, 0, 10] });
    const seconds = (2 * reach) / speed;
    const receiver = { place: [0, 10, 0], shadowOrigin: [0, 10, 0], normal: [0, 0, 1] } as const;
    const lux = meterWith(stage, lampOn([at(-reach, 0), at(reach, seconds)]), receiver, moments(count));
    return 4 * Math.PI * candela * seconds * lux;
  };
  const source = 'inverse square and cosine laws integrated along the track, closed form';
  it.each([1, 2, 5])('%d m off on a track without end: H = 2 I / (v d) (1 %)', (away) => {
    // a track of 100 d on each side lacks 0.005 % of the endless one
    check({
      id: `1.4a, ${away} m`,
      claim: `dose of 1000 cd at 0.5 m/s, ${away} m off, track without end`,
      source,
      unit: 'lx s',
      expected: (2 * candela) / (speed * away),
      ours: dose(away, 100 * away, 20_000),
      tolerance: { relative: 0.01 },
    });
  });
  it.each([0.5, 1, 4])(
    '2 m off from %d m on one side to as far on the other: (2 I / v d) x / √(d² + x²) (1 %)',
    (x) => {
      check({
        id: `1.4b, ${x} m`,
        claim: `dose of 1000 cd at 0.5 m/s, 2 m off, from ${x} m left to ${x} m right`,
        source,
        unit: 'lx s',
        expected: ((2 * candela) / (speed * 2)) * (x / Math.hypot(2, x)),
        ours: dose(2, x, 2000),
        tolerance: { relative: 0.01 },
      });
    },
  );
});

describe('paint budget', () => {
  // a wall of 8 × 6 m, its face to the south, painted in lines over its inner 5 × 3 m: the beam hardly leaves it
  const [wide, high] = [8, 6];
  const wall = subjectOf('wall', [
    { kind: 'box', position: [0, 0.25, 0], widthMetres: wide, depthMetres: 0.5, heightMetres: high },
  ]);
  const stage = stageWith(wall);
  const torch = emitterOf(thousandLumens({ kind: 'torch', diameterMm: 20, beam: { shape: 'lobe', degrees: 8 } }));
  const lines = 7;

  /** Mean over the wall of the light of a lamp that paints it from so far, per lumen: by metering every 0.2 m. */
  const meanLux = (away: number): number => {
    const waypoints = Array.from({ length: 2 * lines }, (_, i): Waypoint => {
      const row = Math.floor(i / 2);
      const east = (i % 2 === 0) === (row % 2 === 0) ? -2.5 : 2.5;
      return { time: i, position: [0, -away, 3], aim: [east, 0, 1.5 + (3 * row) / (lines - 1)] };
    });
    const times = evenSpeedTimes(waypoints, { on: 0, off: 20 });
    const source = lampOn(
      waypoints.map((waypoint, i) => ({ ...waypoint, time: times[i] as number })),
      torch,
    );
    const samples = moments(600);
    const step = 0.2;
    let [sum, count] = [0, 0];
    for (let east = step / 2 - wide / 2; east < wide / 2; east += step)
      for (let up = step / 2; up < high; up += step) {
        const place: Vec3 = [east, up, 0];
        sum += meterWith(stage, source, { place, shadowOrigin: [east, up, 1e-4], normal: [0, 0, 1] }, samples);
        count++;
      }
    return sum / count;
  };

  it.each([2, 4, 8])('painted from %d m: seconds = dose × area ÷ lumens, whatever the distance (5 %)', (away) => {
    const [dose, lumens] = [14, 40];
    check({
      id: `budget, ${away} m`,
      claim: `seconds to give a wall of 48 m² a mean dose of 14 lx s with 40 lm, swept from ${away} m`,
      source: 'light that lands is neither more nor less than what was sent: dose × area = lumens × seconds',
      unit: 's',
      expected: paintBudgetLumenSeconds(dose, wide * high) / lumens,
      ours: dose / (lumens * meanLux(away)),
      tolerance: { relative: 0.05 },
    });
  });
});

describe('a wall swept from one end', () => {
  // its face runs east along north = 0; the lamp stands 2 m out from it, so far that the near end is 3 m away, the far one 20 m
  const out = 2;
  const alongAt = (metres: number) => Math.sqrt(metres ** 2 - out ** 2);
  const wall = subjectOf('wall', [
    { kind: 'box', position: [12, 0.25, 0], widthMetres: 40, depthMetres: 0.5, heightMetres: 4 },
  ]);
  const stage = stageWith(wall);
  const eye: Vec3 = [11, 1.5, 14];
  const emitter = emitterOf(thousandLumens({ kind: 'torch', diameterMm: 20, beam: { shape: 'lobe', degrees: 1.5 } }));
  const lamp = [0, -out, 1.5] as const;
  const at = (metres: number): Waypoint => ({ time: 0, position: [...lamp], aim: [alongAt(metres), 0, 1.5] });
  // a minute: in half of it the near end would want a hand quicker than evenDose lets it be, 45 degrees a second
  const stroke = { on: 0, off: 60 };

  /** Dose on the wall so far from the lamp, by summing over the way. */
  const dosesOf = (waypoints: readonly Waypoint[], distances: readonly number[]): number[] => {
    const source = lampOn(waypoints, emitter);
    const samples = moments(8000);
    return distances.map((metres) => {
      const place: Vec3 = [alongAt(metres), 1.5, 0];
      expect(distance(place, worldFromDocument([...lamp]))).toBeCloseTo(metres, 9);
      return meterWith(stage, source, { place, shadowOrigin: [place[0], place[1], 1e-4], normal: [0, 0, 1] }, samples);
    });
  };
  const stops = (doses: readonly number[]) => Math.log2(Math.max(...doses) / Math.min(...doses));

  it('at constant speed of the spot: dose falls with the distance, 3 to 20 m is log2(20/3) stops (0.1)', () => {
    // a narrow beam gives I / r² × sin g at a place it passes, with g the angle to the wall, and turns by v sin g / r there:
    // the dose is the beam's angular width over that, so proportional to 1 / (v r). The way goes on past both ends, so that
    // the whole of the beam passes them.
    const past = [at(2.2), at(35)];
    const times = evenSpeedTimes(past, stroke);
    const [near, far] = dosesOf(
      past.map((waypoint, i) => ({ ...waypoint, time: times[i] as number })),
      [3, 20],
    ) as [number, number];
    check({
      id: 'constant speed',
      claim: 'wall 3 to 20 m away swept from one end at constant speed: near over far dose',
      source: 'inverse square and cosine laws over the turn of a narrow beam, closed form 1 / (v r)',
      unit: 'stops',
      expected: Math.log2(20 / 3),
      ours: Math.log2(near / far),
      tolerance: { absolute: 0.1 },
    });
  });

  it('with even-dose dwell the same wall is even within half a stop, both ends included', () => {
    const evened = evenDose({ stage, eye, emitter, waypoints: [at(3), at(20)] }, stroke);
    if (evened.kind !== 'even') throw new Error(`unlit at ${evened.unlit.join()}`);
    const distances = Array.from({ length: 35 }, (_, i) => 3 + i / 2);
    const spread = stops(dosesOf(evened.waypoints, distances));
    expect(spread).toBeLessThan(0.5);
    // and far from it before: without the whole beam past the ends, more than what distance alone makes
    const times = evenSpeedTimes(evened.waypoints, stroke);
    const constant = evened.waypoints.map((waypoint, i) => ({ ...waypoint, time: times[i] as number }));
    expect(stops(dosesOf(constant, distances))).toBeGreaterThan(Math.log2(20 / 3));
    check({
      id: 'even dose',
      claim: 'the same with even-dose dwell: least to greatest dose at 35 places from 3 to 20 m',
      source: 'an even dose is 0 stops; half a stop is what we promise',
      unit: 'stops',
      expected: 0,
      ours: spread,
      tolerance: { absolute: 0.5 },
    });
  });
});
