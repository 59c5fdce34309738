import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { judgeGuess } from '../../../core/readings/guess-reading.ts';
import { type ShadowReading, shadowReading } from '../../../core/readings/shadow-reading.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

/** A shadow of 4 m toward the north-east by the 3-4-5 triangle, thrown from the origin. */
const tip: GroundPoint = [3, 4];
const bearingDegrees = (Math.atan2(3, 4) * 180) / Math.PI;
const finite: ShadowReading = {
  subjectId: 'post',
  bearingDegrees,
  lengthMetres: 5,
  endless: false,
  tip,
  inFrameShare: 1,
};
const endless: ShadowReading = { ...finite, lengthMetres: null, endless: true, tip: null };
const foot: GroundPoint = [0, 0];

describe('judgeGuess', () => {
  it('a guess on the tip is off by nothing (exactly)', () => {
    expect(judgeGuess(tip, foot, finite)).toEqual({ offMetres: 0, offDegrees: 0 });
  });

  it('a guess along the shadow is off by its distance alone, short of the tip or beyond it (abs 1e-12)', () => {
    const short = judgeGuess([1.5, 2], foot, finite);
    expect(short.offMetres).toBeCloseTo(2.5, 12);
    expect(short.offDegrees).toBeCloseTo(0, 12);
    const beyond = judgeGuess([6, 8], foot, finite);
    expect(beyond.offMetres).toBeCloseTo(5, 12);
    expect(beyond.offDegrees).toBeCloseTo(0, 12);
  });

  it.each([
    ['a quarter turn left', [-4, 3], 90, 5 * Math.SQRT2],
    ['a quarter turn right', [4, -3], 90, 5 * Math.SQRT2],
    ['the opposite side', [-3, -4], 180, 10],
  ] as const)(
    'a guess at the right distance %s is off by the turn and its chord (abs 1e-12)',
    (_, guess, degrees, metres) => {
      const judged = judgeGuess(guess, foot, finite);
      expect(judged.offDegrees).toBeCloseTo(degrees, 12);
      expect(judged.offMetres).toBeCloseTo(metres, 12);
    },
  );

  it('counts the smaller turn across north (abs 1e-9)', () => {
    const degrees = (v: number) => (v * Math.PI) / 180;
    const at = (bearing: number): GroundPoint => [2 * Math.sin(degrees(bearing)), 2 * Math.cos(degrees(bearing))];
    const judged = judgeGuess(at(355), foot, { ...finite, tip: at(5), bearingDegrees: 5 });
    expect(judged.offDegrees).toBeCloseTo(10, 9);
  });

  it('moves with the scene: the same for a foot anywhere (abs 1e-9)', () => {
    const shift = ([e, n]: GroundPoint): GroundPoint => [e + 120, n - 35];
    const here = judgeGuess([2, 5], foot, finite);
    const there = judgeGuess(shift([2, 5]), shift(foot), { ...finite, tip: shift(tip) });
    expect(there.offMetres).toBeCloseTo(here.offMetres as number, 9);
    expect(there.offDegrees).toBeCloseTo(here.offDegrees as number, 9);
  });

  it('of a shadow without end only the direction is judged (abs 1e-12)', () => {
    const judged = judgeGuess([-4, 3], foot, endless);
    expect(judged.offMetres).toBeNull();
    expect(judged.offDegrees).toBeCloseTo(90, 12);
    expect(judgeGuess([30, 40], foot, endless).offDegrees).toBeCloseTo(0, 12);
  });

  it('a guess on the foot has no direction, but a distance (abs 1e-12); a tip on the foot leaves none to compare', () => {
    const judged = judgeGuess(foot, foot, finite);
    expect(judged.offDegrees).toBeNull();
    expect(judged.offMetres).toBeCloseTo(5, 12);
    expect(judgeGuess([1, 0], foot, { ...finite, tip: foot }).offDegrees).toBeNull();
  });

  // similar triangles (checkvalues.md 8a): a top h high, d from under a lamp H high, throws its tip d h / (H - h) on
  it('a real shadow by similar triangles is guessed rightly by hand (abs 1e-9 m)', () => {
    const stage = stageWith(
      subjectOf('slab', [{ kind: 'box', position: [0, 5, 0], widthMetres: 2, depthMetres: 0.2, heightMetres: 1 }]),
    );
    const lens = { rollRadians: 0, sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm: 24 };
    const view = cameraView({ position: [0, 1.6, 8], aim: [0, 0.5, -5], ...lens });
    const lamp: Vec3 = [0, 3, 0];
    const shadow = shadowReading(stage, view, stage.subjects[0] as (typeof stage.subjects)[number], lamp);
    // the far edge of the top is 5.1 m off: its shadow falls 5.1 x 1 / (3 - 1) beyond; the corners spread alike by 3 / 2
    const corner: GroundPoint = [1.5, 5.1 * 1.5];
    const guess: GroundPoint = [(shadow.tip?.[0] ?? 0) < 0 ? -corner[0] : corner[0], corner[1]];
    const judged = judgeGuess(guess, [0, 5], shadow);
    expect(judged.offMetres).toBeCloseTo(0, 9);
    expect(judged.offDegrees).toBeCloseTo(0, 6);
  });
});
