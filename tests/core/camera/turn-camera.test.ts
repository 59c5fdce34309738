import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import { forwardThatShows, horizonLine, turned } from '../../../core/camera/turn-camera.ts';
import { add, dot, length, scale, type Vec3 } from '../../../core/geometry/vec.ts';

const viewToward = (forward: Vec3, rollRadians = 0, position: Vec3 = [0, 1.2, 0]) =>
  cameraView({
    position,
    aim: add(position, forward),
    rollRadians,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm: 20,
  });

describe('forwardThatShows', () => {
  it('puts any place at any point of the picture, to 1e-9 of its size, whatever the roll (projected back)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -40, max: 40, noNaN: true }),
        fc.double({ min: -3, max: 12, noNaN: true }),
        fc.double({ min: 3, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        (east, up, away, x, y, roll) => {
          const point: Vec3 = [east, up, -away];
          const before = viewToward([0.2, -0.1, -1], roll);
          const forward = forwardThatShows(before, point, x, y);
          if (!forward) return;
          const [px, py] = projectPoint(viewToward(forward, roll), point) as readonly [number, number];
          expect(Math.abs(px - x)).toBeLessThan(1e-9);
          expect(Math.abs(py - y)).toBeLessThan(1e-9);
        },
      ),
      { seed: 4, numRuns: 2000 },
    );
  });

  it('finds a way for everything that stands within 40 degrees of level', () => {
    for (let i = 0; i < 200; i++) {
      const turn = (i * 2 * Math.PI) / 200;
      const point: Vec3 = [10 * Math.sin(turn), 1.2 + 8 * Math.sin(7 * turn), 10 * Math.cos(turn)];
      expect(forwardThatShows(viewToward([0, 0, -1]), point, 1 / 3, 2 / 3)).not.toBeNull();
    }
  });

  it.each([1, -1])('takes a camera that looks straight up or down (%i) for one without roll', (up) => {
    const steep = { ...viewToward([0, 0, -1]), forward: [0, up, 0] as const, up: [0, 0, up] as const };
    const point: Vec3 = [4, 3, -12];
    const forward = forwardThatShows(steep, point, 0.3, 0.6) as Vec3;
    const [x, y] = projectPoint(viewToward(forward), point) as readonly [number, number];
    expect(x).toBeCloseTo(0.3, 9);
    expect(y).toBeCloseTo(0.6, 9);
  });

  it('gives up on what stands straight overhead and is wanted at the lower edge', () => {
    expect(forwardThatShows(viewToward([0, 0, -1]), [0, 50, 0], 0.5, 1)).toBeNull();
  });
});

describe('turned', () => {
  it('pans a level look by the angle asked, clockwise seen from above', () => {
    const east = turned([0, 0, -1], Math.PI / 2, 0);
    expect(east[0]).toBeCloseTo(1, 12);
    expect(length(east)).toBeCloseTo(1, 12);
  });

  it('tilts by the angle asked and stops at 89 degrees', () => {
    expect(Math.asin(turned([0, 0, -1], 0, 0.3)[1])).toBeCloseTo(0.3, 12);
    expect(Math.asin(turned([0, 0, -1], 0, 3)[1])).toBeCloseTo((89 * Math.PI) / 180, 12);
  });

  it('takes back what it did', () => {
    const start: Vec3 = [0.6, 0.1, -Math.sqrt(1 - 0.37)];
    const back = turned(turned(start, 0.4, -0.2), -0.4, 0.2);
    expect(dot(start, back)).toBeCloseTo(1, 12);
  });
});

describe('horizonLine', () => {
  it('runs where far level places are projected, at both edges, for any tilt and roll (1e-6)', () => {
    for (const [tilt, roll] of [
      [0, 0],
      [0.2, 0],
      [-0.15, 0.1],
      [0.3, -0.6],
    ] as const) {
      const view = viewToward([0, Math.sin(tilt), -Math.cos(tilt)], roll, [0, 0, 0]);
      const line = horizonLine(view) as readonly [number, number];
      let compared = 0;
      for (let turn = -1; turn <= 1; turn += 0.05) {
        const at = projectPoint(view, scale([Math.sin(turn), 0, -Math.cos(turn)], 1000));
        if (!at) continue;
        expect(Math.abs(at[1] - (line[0] + (line[1] - line[0]) * at[0]))).toBeLessThan(1e-6);
        compared++;
      }
      expect(compared).toBeGreaterThan(30);
    }
  });

  it('lies in the middle of a level picture, and is not there when the camera stands on its side', () => {
    expect(horizonLine(viewToward([0, 0, -1]))).toEqual([0.5, 0.5]);
    expect(horizonLine(viewToward([0, 0, -1], Math.PI / 2))).toBeNull();
  });
});
