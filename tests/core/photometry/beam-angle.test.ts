import { describe, expect, it } from 'vitest';
import { beamAngleRadians, beamWidth } from '../../../core/photometry/beam-angle.ts';
import { type Emitter, spotIntensityPerLumen } from '../../../core/photometry/emitter.ts';
import { degreesFromRadians, radiansFromDegrees } from '../../../core/units/angle.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { relativeError } from '../support/errors.ts';
import { lampOf, measuredField } from './lamps.ts';

const pose = { position: [0, 0, 0], axis: [0, 0, -1] } as const;

const degreesOf = (emitter: Emitter): number | null => {
  const angle = beamAngleRadians(emitter);
  return angle === null ? null : degreesFromRadians(angle);
};
const torch = (beam: object): Emitter => emitterOf(lampOf({ kind: 'torch', beam }));
const measured = (...field: Parameters<typeof measuredField>): Emitter =>
  emitterOf(lampOf({ kind: 'torch', beam: { shape: 'measured', beamId: 'file' } }), [measuredField(...field)]);
const apart = (emitter: Emitter, expected: number): number => Math.abs((degreesOf(emitter) ?? Number.NaN) - expected);
const snoot = (emitter: Emitter, degrees: number, spreadShare = 0): Emitter => ({
  ...emitter,
  front: { spreadShare, cosSnoot: Math.cos(radiansFromDegrees(degrees / 2)) },
});
/** Degrees: what halving leaves, and rounding. */
const hair = 1e-4;

describe('beamAngleRadians: full angle between the halves of the peak', () => {
  it.each([1, 4, 12, 45, 90, 150, 170])(
    'lobe of %d degrees has that angle by its definition (abs 1e-4 degrees)',
    (degrees) => {
      expect(apart(torch({ shape: 'lobe', degrees }), degrees)).toBeLessThanOrEqual(hair);
    },
  );

  it('Lambertian: 120 degrees, as cos 60 is one half (abs 1e-4 degrees)', () => {
    expect(apart(torch({ shape: 'open' }), 120)).toBeLessThanOrEqual(hair);
  });

  it.each([1, 2, 5, 20, 63, 120])('flood of %d degrees ends at its edge (abs 1e-4 degrees)', (degrees) => {
    expect(apart(torch({ shape: 'flood', degrees }), degrees)).toBeLessThanOrEqual(hair);
  });

  it('measured, falling in a straight line to nothing at 50 degrees: 50 degrees (abs 1e-4)', () => {
    expect(
      apart(
        measured([0, 50], [0], (v) => 900 - 18 * v),
        50,
      ),
    ).toBeLessThanOrEqual(hair);
  });

  it('measured, wider one way than the other: the mean of both (abs 1e-4 degrees)', () => {
    // 0-180 plane even to 60, 90-270 plane even to 20; the step between 20 and 21 is nearly an edge
    const oval = measured([0, 20, 21, 60, 61, 90], [0, 90], (v, h) => (v <= (h === 0 ? 60 : 20) ? 100 : 0));
    expect(apart(oval, (121 + 41) / 2)).toBeLessThanOrEqual(hair);
  });

  it('measured, brightest off its axis, in a snoot that cuts only its tail: peak and halves are those of the file', () => {
    // rises from 50 to 100 cd at 20 degrees, falls to nothing at 40: half its peak at 30
    const wings = measured([0, 20, 40], [0], (v) => (v === 0 ? 50 : v === 20 ? 100 : 0));
    expect(apart(snoot(wings, 70), 60)).toBeLessThanOrEqual(hair);
    expect(relativeError(beamWidth(snoot(wings, 70)).peakPerLumen, beamWidth(wings).peakPerLumen)).toBeLessThan(1e-12);
  });

  it('measured, with a dark middle: to the outer halves (abs 1e-4 degrees)', () => {
    const ring = measured([0, 20, 40], [0], (v) => (v === 20 ? 100 : 0));
    expect(apart(ring, 60)).toBeLessThanOrEqual(hair);
  });

  it('a half plane that nowhere reaches half the peak has no width: two fans of 30 to 40 degrees to the sides (abs 0.2)', () => {
    const fans = measured([0, 29, 30, 40, 41, 90], [0, 90], (v, h) =>
      h === 0 && v >= 30 && v <= 40 ? 100 : 10 - v / 10,
    );
    // two half planes out to where 40 to 41 degrees passes one half, two of none
    // (from 100 at 40 to 5.9 at 41 degrees the half is at 40.53)
    expect(apart(fans, (2 * 40.5 + 0) / 2)).toBeLessThanOrEqual(0.2);
  });

  it('a snoot narrows it to its cone, and leaves a narrower beam as it is; a globe’s too (abs 1e-4 degrees)', () => {
    expect(apart(snoot(torch({ shape: 'open' }), 24), 24)).toBeLessThanOrEqual(hair);
    expect(apart(snoot(torch({ shape: 'lobe', degrees: 12 }), 60), 12)).toBeLessThanOrEqual(hair);
    expect(apart(snoot(emitterOf(lampOf({ kind: 'lantern' })), 70), 70)).toBeLessThanOrEqual(hair);
    // 100 cd as far as 80 degrees, which the snoot cuts at 15
    expect(
      apart(
        snoot(
          measured([0, 80], [0], () => 100),
          30,
        ),
        30,
      ),
    ).toBeLessThanOrEqual(hair);
  });

  it('cloth that spreads all makes it 120 degrees, of a file too (abs 1e-4)', () => {
    expect(apart(snoot(torch({ shape: 'lobe', degrees: 12 }), 360, 1), 120)).toBeLessThanOrEqual(hair);
    expect(
      apart(
        snoot(
          measured([20, 40], [0], () => 10),
          360,
          1,
        ),
        120,
      ),
    ).toBeLessThanOrEqual(hair);
  });

  it('is null for lamps that shine all round, for globes and tubes', () => {
    expect(degreesOf(emitterOf(lampOf({ kind: 'point' })))).toBeNull();
    expect(degreesOf(measured([0, 180], [0], () => 50))).toBeNull();
    expect(degreesOf(emitterOf(lampOf({ kind: 'lantern' })))).toBeNull();
    expect(degreesOf(emitterOf(lampOf({ kind: 'tube', lengthMm: 500 })))).toBeNull();
  });
});

describe('beamWidth of measured beams', () => {
  /** Even to 60, 45, 30 or 15 degrees, by quarter of the circle, and hard edged but for a hundredth of a degree. */
  const edges = [60, 45, 30, 15];
  const knots = [0, ...edges.flatMap((edge) => [edge, edge + 0.01]).sort((a, b) => a - b), 90];
  const quarters = measuredField(knots, [0, 90, 180, 270, 360], (v, h) =>
    v <= (edges[(h / 90) % 4] as number) ? 100 : 0,
  );
  const quadrant = measuredField([0, 10, 30, 50, 90], [0, 30, 60, 90], (v, h) => 1000 * Math.exp(-v / (5 + h)));
  const turned = (field: typeof quarters, turnDegrees: number): Emitter =>
    emitterOf(lampOf({ kind: 'torch', beam: { shape: 'measured', beamId: 'file', turnDegrees } }), [field]);

  it.each([0, 15, 30, 45, 90, 137])('turning the lamp by %d degrees does not change it (abs 1e-4 degrees)', (turn) => {
    expect(apart(turned(quarters, turn), (60.005 + 45.005 + 30.005 + 15.005) / 2)).toBeLessThanOrEqual(hair);
    expect(apart(turned(quadrant, turn), degreesOf(turned(quadrant, 0)) ?? 0)).toBeLessThanOrEqual(hair);
    const dressed = degreesOf(snoot(turned(quadrant, 0), 80, 0.3)) ?? 0;
    expect(apart(snoot(turned(quadrant, turn), 80, 0.3), dressed)).toBeLessThanOrEqual(hair);
  });

  it('the peak is that of all planes: one brighter by itself at 45 degrees halves the others away (abs 1e-4)', () => {
    // 100 cd falling to nothing at 40 degrees; in the plane 45 and its mirror images 300, so that half is 150
    const fan = measured([0, 40], [0, 45, 90], (v, h) => (h === 45 ? 300 : 100) * (1 - v / 40));
    expect(apart(fan, (4 * 2 * 20 + 4 * 0) / 8)).toBeLessThanOrEqual(hair);
  });

  it('planes count by their share of the circle, half way to their neighbours on both sides (abs 1e-4 degrees)', () => {
    // 0, 45, 90 and 180 stand for 112.5, 45, 67.5 and 135 degrees
    const uneven = measured([0, 80], [0, 45, 90, 180, 360], (v, h) => (h % 360 === 45 ? 0 : 80 - v));
    const shares = [(45 + 180) / 2, 45, (45 + 90) / 2, (90 + 180) / 2].map((degrees) => degrees / 360);
    expect(apart(uneven, 2 * 40 * (1 - (shares[1] as number)))).toBeLessThanOrEqual(hair);
  });

  it('with cloth, the peak between two angles of the file is found (rel 1e-6, against a fine search)', () => {
    const rising = snoot(
      measured([0, 60, 90], [0], (v) => (v === 60 ? 10 : 8)),
      360,
      0.5,
    );
    let most = 0;
    for (let angle = 0; angle < Math.PI / 2; angle += 1e-4)
      most = Math.max(most, spotIntensityPerLumen(rising, pose, [Math.sin(angle), 0, -Math.cos(angle)], null));
    const { peakPerLumen } = beamWidth(rising);
    const onAxis = spotIntensityPerLumen(rising, pose, [0, 0, -1], null);
    expect(peakPerLumen).toBeGreaterThan(onAxis * 1.0001);
    expect(relativeError(peakPerLumen, most)).toBeLessThanOrEqual(1e-6);
  });

  it('light behind the lamp, brighter than twice that in front: no width in front', () => {
    expect(degreesOf(measured([0, 90, 91, 180], [0], (v) => (v > 90 ? 100 : 40)))).toBeNull();
  });

  it('two beams, one forward and one back: the forward one (abs 1e-4 degrees)', () => {
    const both = measured([0, 30, 150, 180], [0], (v) => (v === 0 || v === 180 ? 100 : 0));
    expect(apart(both, 30)).toBeLessThanOrEqual(hair);
  });

  it('a snoot within a file’s dark middle stops everything', () => {
    expect(
      beamWidth(
        snoot(
          measured([30, 60], [0], () => 10),
          40,
        ),
      ),
    ).toEqual({ peakPerLumen: 0, fullRadians: null });
  });
});
