import { describe, expect, it } from 'vitest';
import { encodeSrgb } from '../../../core/colour/srgb.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { lampFromShot } from '../../../core/testshot/lamp-from-shot.ts';
import { measuredAgainstPredicted } from '../../../core/testshot/measured-against-predicted.ts';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import { predictedSpot } from '../../../core/testshot/predicted-spot.ts';
import { spotLevel } from '../../../core/testshot/spot-level.ts';
import { developPicture } from '../../../core/trace/picture.ts';
import { cutOut, linearOf, onlyFrame, throughJpeg, wallSetup } from './test-frame.ts';

const truth = -1.3;
const radius = 0.03;

/** What the feature makes of a photo of a lamp that is weaker than its box, clicked at the same place in both. */
const judge = (
  bytes: Uint8Array,
  place: readonly [number, number],
  look: PhotoLook,
  frame: object = {},
  night: object = {},
) => {
  const asBoxed = onlyFrame(wallSetup(0, frame, night));
  const predicted = predictedSpot(asBoxed.world, asBoxed.frame, place, radius, ['pass']);
  const compared = measuredAgainstPredicted(spotLevel(cutOut(throughJpeg(bytes), place, radius)), predicted, look);
  if ('refused' in compared) throw new Error(compared.refused);
  const lamp = lampFromShot(compared);
  if ('refused' in lamp) throw new Error(lamp.refused);
  return { compared, lamp };
};

/** Noise of a fixed seed, even from -1 to 1. */
const noiseOf = (seed: number) => {
  const random = seededRandom(seed);
  return () => 2 * random() - 1;
};

describe('a JPEG of a lamp 1.3 stops weaker than its box, rendered by the reference, plain response', () => {
  const bytes = developPicture(linearOf(wallSetup(truth)), 'plain');
  it.each([
    [0.5, 0.5],
    [0.35, 0.45],
    [0.25, 0.6],
    [0.62, 0.4],
    [0.7, 0.55],
  ] as const)('clicked at %f, %f: the lamp is found within 0.1 stop', (x, y) => {
    const { lamp } = judge(bytes, [x, y], 'neutral');
    expect(Math.abs(lamp.stops - truth)).toBeLessThanOrEqual(0.1);
    expect(lamp.uncertaintyStops).toBeLessThanOrEqual(0.5);
  });

  it('moonlight and skylight that give a good part of the spot are taken off (0.1 stop)', () => {
    const night = {
      moonlight: { bearingDegrees: 200, altitudeDegrees: 40, illuminanceLux: 0.2 },
      skylight: { illuminanceLux: 0.2 },
    };
    const lit = developPicture(linearOf(wallSetup(truth, { iso: 200 }, night)), 'plain');
    const { compared, lamp } = judge(lit, [0.5, 0.5], 'neutral', { iso: 200 }, night);
    expect(compared.restShare).toBeGreaterThan(0.1);
    expect(Math.abs(lamp.stops - truth)).toBeLessThanOrEqual(0.1);
    // all of it would have been put down to the lamp too little
    expect(compared.differenceStops).toBeGreaterThan(truth + 0.15);
  });
});

/**
 * A camera’s own look, invented: contrast about mid-grey with a shoulder to white, mid-grey and white kept:
 * y = x^g (1 + k) / (x^g + k).
 */
const cameraCurve = (contrast: number) => {
  const grey = 0.18 ** contrast;
  const k = (grey * (1 - 0.18)) / (0.18 - grey);
  return (x: number) => (x ** contrast * (1 + k)) / (x ** contrast + k);
};

const cameraBytes = (linear: Float64Array, contrast: number, gains: readonly number[], noise: number) => {
  const [curve, random] = [cameraCurve(contrast), noiseOf(7)];
  return Uint8Array.from(linear, (v, i) => {
    const sensed = 0.18 * v * (gains[i % 3] as number);
    // shot noise: as the root of the light
    const noisy = sensed + noise * Math.sqrt(Math.max(sensed, 0.002)) * (random() + random());
    return Math.round(255 * encodeSrgb(curve(Math.min(Math.max(noisy, 0), 1))));
  });
};

describe('a camera-like JPEG of that lamp: own tone curve, noise, white balance off, baseline JPEG', () => {
  const linear = new Map([400, 800, 1250, 2000, 3200].map((iso) => [iso, linearOf(wallSetup(truth, { iso }))]));
  const gainsOfBalance = [
    [1, 1, 1],
    [1.5, 1, 0.7],
    [0.75, 1, 1.6],
  ] as const;
  const cases = [1.15, 1.3, 1.45, 1.6].flatMap((contrast) => gainsOfBalance.map((gains) => [contrast, gains] as const));
  const judged = (contrast: number, gains: readonly number[], iso: number, x: number, look: PhotoLook) =>
    judge(cameraBytes(linear.get(iso) as Float64Array, contrast, gains, 0.03), [x, 0.45], look, { iso });

  it.each(cases)('contrast %f, gains %j, spot within a stop of mid-grey: within 0.4 stop', (contrast, gains) => {
    for (const iso of [2000, 3200])
      for (const x of [0.35, 0.42]) {
        const { compared, lamp } = judged(contrast, gains, iso, x, 'unknown');
        expect(Math.abs(compared.measuredStops)).toBeLessThanOrEqual(1);
        expect(Math.abs(lamp.stops - truth)).toBeLessThanOrEqual(0.4);
      }
  });

  it.each(cases)(
    'contrast %f, gains %j, spots from -2 to +0.5 stops: within what is said on screen',
    (contrast, gains) => {
      const levels: number[] = [];
      for (const iso of linear.keys())
        for (const x of [0.3, 0.5])
          for (const look of ['unknown', 'standard'] as const) {
            try {
              const { compared, lamp } = judged(contrast, gains, iso, x, look);
              levels.push(compared.measuredStops);
              expect(Math.abs(lamp.stops - truth)).toBeLessThanOrEqual(lamp.uncertaintyStops);
            } catch (error) {
              // too dark a spot may be refused, in words
              if (!/could only be told/.test(String(error))) throw error;
            }
          }
      expect(levels.length).toBeGreaterThanOrEqual(14);
      expect(Math.min(...levels)).toBeLessThan(-2);
      expect(Math.max(...levels)).toBeGreaterThan(0.5);
    },
  );
});
