import { describe, expect, it } from 'vitest';
import { distance, dot, normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { person } from '../../../core/kits/person.ts';
import { jointsOf } from '../../../core/kits/shared/body.ts';
import { boundsOf, kitSubject } from './kit-checks.ts';

const degrees = (radians: number) => (radians * 180) / Math.PI;
const poses = [
  ['standing', 0, 0],
  ['pointing', 0.6, 0],
  ['sitting', 0, 0],
  ['sitting', 0, 0.15],
  ['sitting', 0, 0.28],
  // so high that the arms just reach the knees
  ['sitting', 0, 1 / 3],
] as const;

describe('person', () => {
  // Drillis and Contini 1966, shares of stature; seen in Winter 2009 as quoted by others
  it.each(poses)(
    '%s (arm %d, seat %d): thigh 0.245, shank 0.246, upper arm 0.186, forearm 0.146 of the stature',
    (pose, arm, seat) => {
      for (const { hip, knee, ankle, shoulder, elbow, wrist } of jointsOf(pose, arm, seat).sides) {
        expect(distance(hip, knee)).toBeCloseTo(0.245, 3);
        // a leg that stands is a hair shorter, so that it bends the right way
        expect(Math.abs(distance(knee, ankle) - 0.246)).toBeLessThanOrEqual(0.002);
        expect(distance(shoulder, elbow)).toBeCloseTo(0.186, 3);
        expect(distance(elbow, wrist)).toBeCloseTo(0.146, 3);
      }
    },
  );

  it.each([1.5, 1.75, 2])('stands %d m high on the ground (1 mm)', (heightMetres) => {
    const { low, high } = boundsOf(kitSubject(person, { heightMetres }));
    expect(Math.abs(high[2] - heightMetres)).toBeLessThanOrEqual(1e-3);
    expect(Math.abs(low[2])).toBeLessThanOrEqual(1e-3);
  });

  // shoulders 0.818 and chin 0.870 of the stature (same source)
  it('has shoulders and chin where they are measured on people (2 % of the stature)', () => {
    const made = kitSubject(person, { heightMetres: 2 });
    expect(Math.abs(boundsOf(made, 'Shoulder').high[2] / 2 - 0.818)).toBeLessThanOrEqual(0.02);
    expect(Math.abs(boundsOf(made, 'Head').low[2] / 2 - 0.87)).toBeLessThanOrEqual(0.02);
  });

  // sitting height is 52 to 53 % of stature in adults (Cormic index; from memory), less some for leaning
  it('sits 48 to 54 % of the stature higher than the seat, on whatever height', () => {
    for (const seatMetres of [0, 0.25, 0.5]) {
      const { high } = boundsOf(kitSubject(person, { heightMetres: 1.8, pose: 2, seatMetres }));
      expect((high[2] - seatMetres) / 1.8).toBeGreaterThan(0.48);
      expect((high[2] - seatMetres) / 1.8).toBeLessThan(0.54);
    }
  });

  it.each([-10, 0, 35, 70])('points %d° over level with a straight arm, to the east', (pointsUpDegrees) => {
    const [, east] = jointsOf('pointing', (pointsUpDegrees * Math.PI) / 180, 0).sides;
    if (!east) throw new Error('no arm');
    const arm = normalize(sub(east.fingertips, east.shoulder));
    expect(degrees(Math.asin(arm[2]))).toBeCloseTo(pointsUpDegrees, 1);
    expect(arm[0]).toBeGreaterThan(0.3);
    expect(dot(normalize(sub(east.elbow, east.shoulder)), arm)).toBeCloseTo(1, 9);
  });

  it('looks to the south: the nose is in front of the head', () => {
    const made = kitSubject(person);
    expect(boundsOf(made, 'Nose').low[1]).toBeLessThan(boundsOf(made, 'Head').low[1]);
  });

  it('knees bend forward and up, elbows out and back', () => {
    for (const side of jointsOf('sitting', 0, 0).sides) {
      const middle = (a: Vec3, b: Vec3, axis: 0 | 1 | 2) => (a[axis] + b[axis]) / 2;
      expect(side.knee[2]).toBeGreaterThan(middle(side.hip, side.ankle, 2) + 0.1);
      expect(Math.abs(side.elbow[0])).toBeGreaterThan(Math.abs(middle(side.shoulder, side.wrist, 0)));
    }
  });
});
