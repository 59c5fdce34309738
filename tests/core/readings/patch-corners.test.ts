import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import {
  isOpenQuad,
  type PatchCorners,
  type PictureQuad,
  patchCorners,
  patchInPicture,
  quadOfRectangle,
} from '../../../core/readings/patch-corners.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const lens = { sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm: 24 };
/** A wall 6 m wide and 2 m high whose face lies 5 m north of the origin. */
const stage = stageWith(
  subjectOf('wall', [{ kind: 'box', position: [0, 5.2, 0], widthMetres: 6, depthMetres: 0.4, heightMetres: 2 }]),
);
const view = cameraView({ position: [0, 1, 3], aim: [0, 1, -5], rollRadians: 0, ...lens });
/** A place on the wall's face as the camera sees it, from similar triangles: 8 m away, half the field 6 m wide. */
const onWall = (x: number, y: number): Vec3 => [(2 * x - 1) * 6, 1 + (1 - 2 * y) * 4, -5];

describe('patchCorners', () => {
  it('finds the places on a wall behind a rectangle of the picture (1 mm)', () => {
    const corners = patchCorners(stage, view, quadOfRectangle(0.4, 0.4, 0.65, 0.55)) as PatchCorners;
    const expected = [onWall(0.4, 0.4), onWall(0.65, 0.4), onWall(0.65, 0.55), onWall(0.4, 0.55)];
    corners.forEach((corner, c) => {
      expect(Math.hypot(...corner.map((v, i) => v - ((expected[c] as Vec3)[i] as number)))).toBeLessThan(1e-3);
    });
  });

  it('goes on to the ground in front: heights are nought there (1e-5 m), and to the sky: null', () => {
    const low = patchCorners(stage, view, quadOfRectangle(0.3, 0.7, 0.7, 0.9)) as PatchCorners;
    for (const [, height] of low) expect(Math.abs(height)).toBeLessThan(1e-5);
    // over the wall's top edge, which lies at 1 - 1/4 of half the height
    expect(patchCorners(stage, view, quadOfRectangle(0.4, 0.36, 0.6, 0.5))).toBeNull();
  });

  it('and back into the picture: corners come out where they were drawn, from any camera that sees them (1e-6)', () => {
    let seen = 0;
    fc.assert(
      fc.property(
        fc.double({ min: -2, max: 2, noNaN: true }),
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        fc.array(fc.double({ min: 0.05, max: 0.95, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (x, y, rollRadians, numbers) => {
          const from = cameraView({ position: [x, y, 4], aim: [0, 0.5, -4], rollRadians, ...lens });
          const quad = [0, 2, 4, 6].map((i) => [
            numbers[i],
            0.45 + (numbers[i + 1] as number) / 2,
          ]) as unknown as PictureQuad;
          const corners = patchCorners(stage, from, quad);
          if (!corners) return;
          seen++;
          const back = patchInPicture(from, corners) as PictureQuad;
          back.forEach((place, c) => {
            const drawn = quad[c] as readonly [number, number];
            expect(Math.hypot(place[0] - drawn[0], place[1] - drawn[1])).toBeLessThan(1e-6);
          });
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
    expect(seen).toBeGreaterThan(100);
  });
});

describe('patchInPicture', () => {
  it('a patch stays where it is in the scene when the camera steps aside: its picture moves by f d / z (1e-9)', () => {
    const corners: PatchCorners = [onWall(0.4, 0.4), onWall(0.6, 0.4), onWall(0.6, 0.5), onWall(0.4, 0.5)];
    const aside = cameraView({ position: [0.6, 1, 3], aim: [0.6, 1, -5], rollRadians: 0, ...lens });
    const quad = patchInPicture(aside, corners) as PictureQuad;
    // 0.6 m at 8 m is 1.8 mm on a sensor of 36 mm
    expect(Math.abs(quad[0][0] - (0.4 - 1.8 / 36))).toBeLessThan(1e-9);
    expect(Math.abs(quad[0][1] - 0.4)).toBeLessThan(1e-9);
  });

  it('is null when a corner lies behind the lens', () => {
    const corners: PatchCorners = [onWall(0.4, 0.4), onWall(0.6, 0.4), onWall(0.6, 0.5), [0, 0, 3.5]];
    expect(patchInPicture(view, corners)).toBeNull();
  });
});

describe('isOpenQuad', () => {
  const square = quadOfRectangle(0.2, 0.2, 0.6, 0.6);
  it.each([
    ['a rectangle', square, true],
    ['the same seen from its back', [...square].reverse(), true],
    ['one crossed like a bow', [square[0], square[2], square[1], square[3]], false],
    ['one with a corner pushed in past the middle', [square[0], square[1], [0.35, 0.35], square[3]], false],
    ['one without height', quadOfRectangle(0.2, 0.3, 0.6, 0.3), false],
  ] as const)('%s', (_, quad, isOpen) => {
    expect(isOpenQuad(quad as unknown as PictureQuad)).toBe(isOpen);
  });
});
