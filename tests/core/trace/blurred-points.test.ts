import { describe, expect, it } from 'vitest';
import { skyAt } from '../../../core/sky/sky-at.ts';
import { addBlurred } from '../../../core/trace/blurred-points.ts';
import { placeOnPicture } from '../../../core/trace/on-picture.ts';
import { addPoint, type SkyWay } from '../../../core/trace/sky-points.ts';
import type { Canvas } from '../../../core/trace/splat.ts';
import { directionAt } from '../sky/fake-sky.ts';
import { skyInput } from '../support/sky-inputs.ts';
import { luminanceAt, luxOf, viewOf } from './moon-pictures.ts';

const input = skyInput(-33, 149, Date.UTC(2026, 7, 20, 9, 0));
const toward = directionAt(30, 40);
const view = viewOf({ input, seconds: 0, focalLengthMm: 50, width: 607, toward });
const frame = { view, width: 607, height: 405 };
const empty = (): Canvas => ({ width: 607, height: 405, values: new Float32Array(3 * 607 * 405) });

describe.each([6, 13, 40])('points of %d px in a coarse picture', (sigma) => {
  const way: SkyWay = { frame, states: [skyAt(input)], sigma };
  /** A point of 1 lux at so many degrees beside the middle: as it comes, and by way of the coarse picture. */
  const both = (right: number, up: number) => {
    const seen = [directionAt(30 + up, 40 + right)];
    const [plain, coarse] = [empty(), empty()];
    addPoint(plain, way, seen, () => [1, 1, 1]);
    addBlurred(coarse, way, (canvas, its) => addPoint(canvas, its, seen, () => [1, 1, 1]));
    return { plain, coarse, place: placeOnPicture(frame, seen[0] as never) };
  };

  it('have their light (0.5 %), and at the edge what of it falls into the picture (2 %)', () => {
    const middle = both(0.3, -0.2).coarse;
    if (sigma < 40) expect(Math.abs(luxOf(middle, view) - 1)).toBeLessThan(0.005);
    for (const [right, up] of [
      [0.3, -0.2],
      [22, 2],
      [-3, 13.4],
    ] as const) {
      const { plain, coarse } = both(right, up);
      expect(Math.abs(luxOf(coarse, view) / luxOf(plain, view) - 1)).toBeLessThan(0.02);
    }
  });

  it('are where they were (0.05 px each way) and as bright in the middle (5 %)', () => {
    const { plain, coarse, place } = both(0.37, -0.21);
    const middleOf = (canvas: Canvas): [number, number] => {
      let [sum, sx, sy] = [0, 0, 0];
      for (let y = 0; y < 405; y++)
        for (let x = 0; x < 607; x++) {
          const value = luminanceAt(canvas, x, y);
          sum += value;
          sx += value * (x + 0.5);
          sy += value * (y + 0.5);
        }
      return [sx / sum, sy / sum];
    };
    const [a, b] = [middleOf(plain), middleOf(coarse)];
    for (const k of [0, 1] as const) expect(Math.abs(a[k] - b[k])).toBeLessThan(0.05);
    const [x, y] = [Math.floor(place?.x ?? 0), Math.floor(place?.y ?? 0)];
    expect(Math.abs(luminanceAt(coarse, x, y) / luminanceAt(plain, x, y) - 1)).toBeLessThan(0.05);
  });
});
