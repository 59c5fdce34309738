import { describe, expect, it } from 'vitest';
import { predictedSpot } from '../../../core/testshot/predicted-spot.ts';
import { onlyFrame, wallSetup } from './test-frame.ts';

const corner = [0.05, 0.1] as const;
const spotOf = (setup: ReturnType<typeof wallSetup>, place: readonly [number, number]) => {
  const { world, frame } = onlyFrame(setup);
  return predictedSpot(world, frame, place, 0.02, ['pass']);
};
const withFallOff = (setup: ReturnType<typeof wallSetup>) => ({
  ...setup,
  camera: { ...setup.camera, drawn: { ...setup.camera.drawn, vignetting: true } },
});

describe('predictedSpot', () => {
  it('a picture that darkens to its corners does so by cos⁴ of the angle off its axis (rel 1e-9); else that is left out', () => {
    const [plain, fallen] = [spotOf(wallSetup(), corner), spotOf(withFallOff(wallSetup()), corner)];
    // 35 mm over a sensor of 36 by 24 mm: the place lies 0.45 x 36 mm and 0.4 x 24 mm off the middle
    const cosFourth = (35 / Math.hypot(35, 0.45 * 36, 0.4 * 24)) ** 4;
    plain.all.forEach((value, c) => {
      expect((fallen.all[c] as number) / value / cosFourth).toBeCloseTo(1, 9);
    });
    expect(fallen.falloffLeftOutStops).toBe(0);
    expect(plain.falloffLeftOutStops).toBeCloseTo(Math.log2(cosFourth), 9);
  });

  it('has no light, and nothing that differs from part to part, where lamp and sky give none', () => {
    const black = wallSetup(0, {}, { skylight: { illuminanceLux: 0 } });
    const [scheme] = black.schemes as [(typeof black.schemes)[number]];
    const unlit = { ...black, schemes: [{ ...scheme, frames: scheme.frames.map((f) => ({ ...f, passes: [] })) }] };
    expect(spotOf(unlit, [0.5, 0.5])).toMatchObject({ all: [0, 0, 0], rest: [0, 0, 0], spreadStops: 0 });
  });
});
