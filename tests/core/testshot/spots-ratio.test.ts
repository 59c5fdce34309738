import { describe, expect, it } from 'vitest';
import { encodeSrgb } from '../../../core/colour/srgb.ts';
import { type PixelPatch, spotLevel } from '../../../core/testshot/spot-level.ts';
import { spotsRatio } from '../../../core/testshot/spots-ratio.ts';

const patch = (code: number): PixelPatch => ({
  data: new Uint8ClampedArray(12 * 12 * 4).fill(code),
  width: 12,
  height: 12,
});
const ratioOf = (code: number, over: number) => spotsRatio(spotLevel(patch(code)), spotLevel(patch(over)));

describe('a spot of a photo over another', () => {
  it('codes 118 over 188 are 0.36025 in light (IEC 61966-2-1, rel 1e-4)', () => {
    expect(Math.abs(ratioOf(118, 188).ratio / (0.18116424 / 0.50288646) - 1)).toBeLessThan(1e-4);
    expect(ratioOf(118, 188).isBurnt).toBe(false);
    expect(ratioOf(118, 255).isBurnt).toBe(true);
  });

  it.each([0.8, 1, 1.15, 1.3, 1.45, 1.6])(
    'through a curve of contrast %f about mid-grey the ratio is within what is said',
    (contrast) => {
      const code = (light: number) => Math.round(255 * encodeSrgb(0.18 * (light / 0.18) ** contrast));
      for (const [dim, bright] of [
        [0.02, 0.18],
        [0.05, 0.4],
        [0.01, 0.1],
        [0.1, 0.5],
      ] as const) {
        const { ratio, uncertaintyStops } = ratioOf(code(dim), code(bright));
        expect(Math.abs(Math.log2(ratio / (dim / bright)))).toBeLessThanOrEqual(uncertaintyStops);
        expect(uncertaintyStops).toBeLessThan(3);
      }
    },
  );
});
