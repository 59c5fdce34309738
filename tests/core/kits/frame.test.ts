import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeRigid, type Rigid, rigidFromTurns, transformPoint } from '../../../core/geometry/mesh.ts';
import {
  frameOf,
  type Place,
  placeInFrame,
  placementAlong,
  placementOf,
  placeTogether,
} from '../../../core/kits/shared/frame.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';

const seed = 54_201;
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const angle = fc.double({ min: -180, max: 180, noNaN: true });
const placement = fc.record({
  position: fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -9, max: 9, noNaN: true }))) as fc.Arbitrary<Place>,
  turnDegrees: angle,
  // right angles are where turn and roll do the same
  tiltDegrees: fc.oneof(angle, fc.constantFrom(-90, 90, 0, 180)),
  rollDegrees: fc.oneof(angle, fc.constantFrom(-90, 90, 0, 180)),
});
type Placement = { position: Place; turnDegrees: number; tiltDegrees: number; rollDegrees: number };

/** The placement that the stage gives a part, in world axes: other code than the kits'. */
const rigid = ({ position, turnDegrees, tiltDegrees, rollDegrees }: Placement): Rigid =>
  rigidFromTurns(worldFromDocument(position), radians(turnDegrees), radians(tiltDegrees), radians(rollDegrees));
const points: readonly Place[] = [
  [0, 0, 0],
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
  [2, -3, 0.5],
];
const farthest = (a: readonly number[], b: readonly number[]) =>
  Math.max(...a.map((v, i) => Math.abs(v - (b[i] as number))));

describe(`frames of kits (seed ${seed})`, () => {
  it('put points where the stage puts those of a part that is placed so (1e-9 m)', () => {
    fc.assert(
      fc.property(placement, (where) => {
        for (const point of points) {
          const staged = documentFromWorld(transformPoint(rigid(where), worldFromDocument(point)));
          expect(farthest(placeInFrame(frameOf(where), point), staged)).toBeLessThanOrEqual(1e-9);
        }
      }),
      { seed, numRuns: 300 },
    );
  });

  it('come back from their turns (1e-6 m)', () => {
    fc.assert(
      fc.property(placement, (where) => {
        const again = frameOf(placementOf(frameOf(where)));
        for (const point of points)
          expect(farthest(placeInFrame(again, point), placeInFrame(frameOf(where), point))).toBeLessThanOrEqual(1e-6);
      }),
      { seed, numRuns: 300 },
    );
  });

  it('parts placed together land where one placement after the other puts them (1e-6 m)', () => {
    fc.assert(
      fc.property(placement, placement, (outer, inner) => {
        const [part] = placeTogether(
          [{ kind: 'box', widthMetres: 1, depthMetres: 1, heightMetres: 1, ...inner } as const],
          outer,
        );
        const both = composeRigid(rigid(outer), rigid(inner));
        for (const point of points) {
          const staged = documentFromWorld(transformPoint(both, worldFromDocument(point)));
          expect(farthest(placeInFrame(frameOf(part as Placement), point), staged)).toBeLessThanOrEqual(1e-6);
        }
      }),
      { seed, numRuns: 300 },
    );
  });

  it('along two places, up runs from one to the other and east stays level', () => {
    fc.assert(
      fc.property(placement, placement, ({ position: from }, { position: to }) => {
        fc.pre(farthest(from, to) > 0.01);
        const along = placementAlong(from, to);
        expect(farthest(placeInFrame(frameOf(along), [0, 0, along.lengthMetres]), to)).toBeLessThanOrEqual(1e-6);
        expect(Math.abs(frameOf(along).east[2])).toBeLessThanOrEqual(1e-12);
      }),
      { seed, numRuns: 300 },
    );
  });
});
