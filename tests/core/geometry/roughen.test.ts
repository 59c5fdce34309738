import { describe, expect, it } from 'vitest';
import { roughened } from '../../../core/geometry/roughen.ts';

/** A level square of four triangles about its middle, and a corner that belongs to none. */
const skin = {
  places: Float64Array.of(0, 0, 0, 1, 0, 1, 1, 0, -1, -1, 0, -1, -1, 0, 1, 5, 5, 5),
  triangles: Uint32Array.of(0, 1, 2, 0, 2, 3, 0, 3, 4, 0, 4, 1),
};
const thick = () => 1;

describe('roughened', () => {
  it('of no height is the skin itself', () => {
    expect(roughened(skin, { heightMetres: 0, sizeMetres: 1, seed: 1 }, 0.5, thick, false)).toBe(skin);
  });

  it('moves corners along their normal, and leaves one that no triangle has where it is', () => {
    const { places } = roughened(skin, { heightMetres: 0.2, sizeMetres: 2, seed: 3 }, 0.5, thick, false);
    expect([...places.subarray(15)]).toEqual([5, 5, 5]);
    const moves = [0, 1, 2, 3, 4].map((corner) => places[3 * corner + 1] as number);
    expect(Math.max(...moves.map(Math.abs))).toBeGreaterThan(0.001);
    expect(Math.max(...moves.map(Math.abs))).toBeLessThanOrEqual(0.2);
    for (let i = 0; i < 15; i++) if (i % 3 !== 1) expect(places[i]).toBeCloseTo(skin.places[i] as number, 12);
  });
});
