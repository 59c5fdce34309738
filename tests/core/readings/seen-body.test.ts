import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { pictureShare, type SeenBody } from '../../../core/readings/seen-body.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

// level, to the north, 24 mm on 36 x 24: at 10 m the picture is 15 m by 10 m
const { world } = onlyPassOf(
  onePassSetup({
    camera: { position: [0, 0, 1.5], aim: [0, 10, 1.5], focalLengthMm: 24, sensor: { widthMm: 36, heightMm: 24 } },
    pass: { waypoints: [{ position: [2, 5, 1], aim: [0, 8, 1] }] },
  }),
);

const squareOf = (cell: Vec3, across: Vec3): SeenBody => ({
  feet: [0, 0, 0],
  cells: [cell],
  across,
  cellSides: [0.125, 0.125],
  isAtLens: false,
});

describe('pictureShare', () => {
  it('of a square of 0.125 m at 10 m is its area over that of the picture there (rel 1e-9)', () => {
    const share = pictureShare(world, squareOf([1, 1, -10], [1, 0, 0]));
    expect(share / (0.125 ** 2 / (15 * 10))).toBeCloseTo(1, 9);
  });

  it('is nothing behind the lens, and all of it where somebody stands at it', () => {
    const behind = squareOf([0, 1.5, 3], [1, 0, 0]);
    expect(pictureShare(world, behind)).toBe(0);
    expect(pictureShare(world, squareOf([0, 1.5, 0.0], [0, 0, 1]))).toBe(0);
    expect(pictureShare(world, { ...behind, isAtLens: true })).toBe(1);
  });
});
