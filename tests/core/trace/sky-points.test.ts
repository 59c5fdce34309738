import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { SkyState } from '../../../core/sky/sky-state.ts';
import { addStars } from '../../../core/trace/sky-points.ts';
import type { Canvas } from '../../../core/trace/splat.ts';
import { fakeSky } from '../sky/fake-sky.ts';

const direction = [0, 0.5, -Math.sqrt(0.75)] as const;
const [width, height] = [480, 320];
const view = cameraView({
  position: [0, 0, 0],
  aim: [0, 0.5, -Math.sqrt(0.75)],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 100,
});

/** A star of a magnitude thirty degrees up in the middle of a picture, behind cloud of a depth. */
const starOf = (magnitude: number, thinCloudDepth: number): Canvas => {
  const canvas: Canvas = { width, height, values: new Float32Array(3 * width * height) };
  const states: readonly SkyState[] = [fakeSky({ input: { thinCloudDepth } })];
  addStars(
    canvas,
    { frame: { view, width, height }, states, sigma: 0.7 },
    {
      count: 1,
      directions: Float64Array.from(direction),
      magnitudes: Float32Array.of(magnitude),
      colourIndices: Float32Array.of(0.6),
    },
  );
  return canvas;
};
const sumOf = ({ values }: Canvas): number => values.reduce((sum, v) => sum + v, 0);
/** What cloud leaves of a star's light in all of the picture. */
const leftOf = (magnitude: number, depth: number) => sumOf(starOf(magnitude, depth)) / sumOf(starOf(magnitude, 0));
const litPixels = ({ values }: Canvas): number => values.filter((v, i) => i % 3 === 1 && v > 0).length;

describe('addStars behind thin cloud', () => {
  it.each([0.1, 0.4, 1.5])(
    'of depth %d: half of what it takes from a bright star comes back as its glow (rel 1 %)',
    (depth) => {
      // fainter than the sixth magnitude no glow is drawn: what is left came straight
      const straight = leftOf(6.5, depth);
      expect(straight).toBeLessThan(Math.exp(-depth));
      expect(Math.abs(leftOf(2, depth) / (straight + (1 - straight) / 2) - 1)).toBeLessThan(0.01);
    },
  );

  it('spreads a bright star over a third of a degree and more, a faint one and any in clear air not at all', () => {
    expect(litPixels(starOf(2, 0.4))).toBeGreaterThan(20 * litPixels(starOf(2, 0)));
    expect(litPixels(starOf(6.5, 0.4))).toBe(litPixels(starOf(6.5, 0)));
  });
});
