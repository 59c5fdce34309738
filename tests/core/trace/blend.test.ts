import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { blendEntries } from '../../../core/setup/blend-entries.ts';
import { validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { type BlendPart, blendPictures, traceBlend } from '../../../core/trace/blend.ts';
import { feathered, featherSigma } from '../../../core/trace/feather.ts';
import { maskOf, traceMask } from '../../../core/trace/mask.ts';
import { tracePicture } from '../../../core/trace/picture.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { onePassSetup } from '../support/scenes.ts';

const random = seededRandom(21);
const noisy = (length: number) => Float64Array.from({ length }, () => random() * 8);
const part = (picture: Float64Array, weight = 1, mask: Float64Array | null = null): BlendPart => ({
  picture,
  weight,
  mask,
});

describe('blendPictures', () => {
  const [a, b, c] = [noisy(300), noisy(300), noisy(300)] as [Float64Array, Float64Array, Float64Array];
  it('lighten is the greater of each channel', () => {
    blendPictures([part(a), part(b), part(c)], 'lighten').forEach((v, i) => {
      expect(v).toBe(Math.max(a[i] as number, b[i] as number, c[i] as number));
    });
  });
  it('add sums by weight, average is the mean by weight (rel 1e-12)', () => {
    const [sum, mean] = [
      blendPictures([part(a, 2), part(b, 0.5)], 'add'),
      blendPictures([part(a, 2), part(b, 0.5)], 'average'),
    ];
    a.forEach((v, i) => {
      const expected = 2 * v + 0.5 * (b[i] as number);
      expect(Math.abs((sum[i] as number) / expected - 1)).toBeLessThanOrEqual(1e-12);
      expect(Math.abs((mean[i] as number) / (expected / 2.5) - 1)).toBeLessThanOrEqual(1e-12);
    });
  });
  it('an average leaves a place that one frame alone covers as bright as that frame; no frame, black', () => {
    const mask = Float64Array.from({ length: 100 }, (_, p) => (p < 50 ? 1 : 0));
    const rest = mask.map((v, p) => (p < 90 ? 1 - v : 0));
    const mean = blendPictures([part(a, 1, mask), part(b, 3, rest)], 'average');
    mean.forEach((v, i) => {
      const pixel = Math.floor(i / 3);
      const expected = pixel < 50 ? (a[i] as number) : pixel < 90 ? (b[i] as number) : 0;
      expect(v).toBeCloseTo(expected, 12);
    });
  });
});

describe('soft edges', () => {
  const size = { width: 60, height: 1 };
  const hard = Float64Array.from({ length: 60 }, (_, p) => (p < 30 ? 1 : 0));
  const mask = feathered(hard, size, 4);
  const rest = mask.map((v) => 1 - v);
  const grey = new Float64Array(180).fill(0.7);
  it.each(['lighten', 'average', 'add'] as const)(
    'two even frames that share a picture leave no seam: %s (1e-12)',
    (mode) => {
      for (const v of blendPictures([part(grey, 1, mask), part(grey, 1, rest)], mode)) expect(v).toBeCloseTo(0.7, 12);
    },
  );
  it('a frame that has a place to itself fades out where it ends, lightened or not', () => {
    const alone = blendPictures([part(grey, 1, mask)], 'lighten');
    alone.forEach((v, i) => {
      expect(v).toBeCloseTo(0.7 * (mask[Math.floor(i / 3)] as number), 12);
    });
  });
  it('a brighter subject over a whole frame goes over into it without a step', () => {
    const bright = new Float64Array(180).fill(2);
    const over = blendPictures([part(grey), part(bright, 1, mask)], 'lighten');
    over.forEach((v, i) => {
      expect(v).toBeCloseTo(Math.max(0.7, 2 * (mask[Math.floor(i / 3)] as number)), 12);
    });
  });
});

describe('average of n frames of an even grey', () => {
  /** Standard deviation of the green of an even sky, through a small and noisy sensor. */
  const spread = (count: number): number => {
    const setup = onePassSetup({
      camera: {
        position: [0, 0, 2],
        aim: [0, 10, 12],
        focalLengthMm: 50,
        sensor: { pixelsWide: 100, pixelsHigh: 100, fullWellElectrons: 5000 },
        drawn: { noise: true },
      },
      pass: { levelPercent: 0, waypoints: [{ position: [0, -5, 1], aim: [0, 0, 0] }] },
      frame: { iso: 3200, aperture: 2 },
    });
    const [scheme] = setup.schemes as [Scheme];
    const [frame] = scheme.frames as [Scheme['frames'][number]];
    const many = validateSetup({
      ...setup,
      schemes: [
        {
          ...scheme,
          frames: Array.from({ length: count }, (_, i) => ({ ...frame, id: `frame-${i}`, passes: [] })),
          blend: { mode: 'average', frames: [] },
        },
      ],
    });
    const size = { width: 100, height: 60, samples: 1 };
    const [only] = many.schemes as [Scheme];
    const picture = traceBlend(buildWorld(many, only), only, 100, size);
    const greens = picture.filter((_, i) => i % 3 === 1);
    const mean = greens.reduce((sum, v) => sum + v, 0) / greens.length;
    return Math.sqrt(greens.reduce((sum, v) => sum + (v - mean) ** 2, 0) / greens.length) / mean;
  };
  const one = spread(1);
  it.each([2, 4, 9, 16])('%d frames: noise of one over the root of their number (rel 0.05)', (count) => {
    expect(one).toBeGreaterThan(0.01);
    expect(Math.abs(spread(count) / (one / Math.sqrt(count)) - 1)).toBeLessThanOrEqual(0.05);
  });
});

describe('masks from the scene', () => {
  // level camera 1 m over the ground: the horizon of the plane runs through the middle; a post before the left half
  const setup = onePassSetup({
    camera: { position: [0, 0, 1], aim: [0, 10, 1], focalLengthMm: 24 },
    subjects: [
      {
        id: 'post',
        name: 'Post',
        parts: [{ kind: 'box', position: [-50, 20, 0], widthMetres: 100, depthMetres: 1, heightMetres: 90 }],
      },
    ],
    pass: { waypoints: [{ position: [0, 1, 1], aim: [0, 5, 0] }] },
  });
  const world = buildWorld(setup, setup.schemes[0] as Scheme);
  const size = { width: 12, height: 8, samples: 4 };
  const masks = (['sky', 'ground', 'subject'] as const).map((where) => {
    const mask = maskOf({ where, subjectId: where === 'subject' ? 'post' : null }, world.stage);
    if (!mask) throw new Error('no mask');
    return traceMask(world.stage, world.view, mask, size);
  }) as [Float64Array, Float64Array, Float64Array];
  it('sky, ground and subjects share each pixel without rest', () => {
    masks[0].forEach((v, p) => {
      expect(v + (masks[1][p] as number) + (masks[2][p] as number)).toBeCloseTo(1, 12);
    });
  });
  it('land is all that is not sky', () => {
    const land = maskOf({ where: 'land', subjectId: null }, world.stage);
    const shares = land && traceMask(world.stage, world.view, land, size);
    shares?.forEach((v, p) => {
      expect(v + (masks[0][p] as number)).toBeCloseTo(1, 12);
    });
    expect([shares?.includes(0), shares?.includes(1)]).toEqual([true, true]);
  });
  it('sky is over the horizon, ground below, the post before both', () => {
    const at = (x: number, y: number) => masks.map((mask) => mask[y * size.width + x]);
    expect(at(11, 0)).toEqual([1, 0, 0]);
    expect(at(11, 7)).toEqual([0, 1, 0]);
    expect(at(0, 1)).toEqual([0, 0, 1]);
  });
  it('a frame everywhere has no mask, a subject that is hidden is nowhere', () => {
    expect(maskOf({ where: 'everything', subjectId: null }, world.stage)).toBeNull();
    const gone = maskOf({ where: 'subject', subjectId: 'gone' }, world.stage);
    expect(gone && traceMask(world.stage, world.view, gone, size).every((v) => v === 0)).toBe(true);
  });
  it('sky frame over the sky and land frame over the ground are each as they are alone', () => {
    const two = validateSetup({
      ...setup,
      schemes: setup.schemes.map((scheme) => ({
        ...scheme,
        frames: [scheme.frames[0], { ...scheme.frames[0], id: 'sky', iso: 1600, passes: [] }],
        blend: {
          mode: 'lighten',
          frames: [
            { frameId: 'frame', where: 'ground' },
            { frameId: 'sky', where: 'sky' },
          ],
        },
      })),
    });
    const [scheme] = two.schemes as [Scheme];
    expect(blendEntries(scheme)).toHaveLength(2);
    const both = buildWorld(two, scheme);
    const blend = traceBlend(both, scheme, 6000, size);
    const [land, sky] = both.frames.map((frame) => tracePicture(both, frame, size)) as [Float64Array, Float64Array];
    const green = (picture: Float64Array, x: number, y: number) => picture[(y * size.width + x) * 3 + 1];
    expect(green(blend, 11, 0)).toBe(green(sky, 11, 0));
    expect(green(blend, 11, 7)).toBe(green(land, 11, 7));
    expect(green(blend, 0, 1)).toBe(0);
    expect(green(sky, 11, 0)).toBeGreaterThan(2 * (green(land, 11, 0) as number));
  });
});

describe('feathered', () => {
  it('an edge runs from a tenth to nine tenths over the width asked for (5 %)', () => {
    const size = { width: 400, height: 3 };
    const edge = Float64Array.from({ length: 1200 }, (_, i) => (i % 400 < 200 ? 0 : 1));
    for (const width of [10, 40, 90]) {
      const soft = feathered(edge, size, featherSigma(width / 400, 400)).subarray(400, 800);
      const crossing = (level: number) => {
        const i = soft.findIndex((v) => v >= level);
        const [below, above] = [soft[i - 1] as number, soft[i] as number];
        return i - 1 + (level - below) / (above - below);
      };
      expect(Math.abs((crossing(0.9) - crossing(0.1)) / width - 1)).toBeLessThanOrEqual(0.05);
    }
  });
  it('leaves a mask alone that wants no soft edge, and keeps all of what is even', () => {
    const mask = Float64Array.from({ length: 60 }, (_, i) => i % 2);
    expect(feathered(mask, { width: 10, height: 6 }, 0)).toBe(mask);
    feathered(mask.fill(1), { width: 10, height: 6 }, 2).forEach((v) => {
      expect(v).toBeCloseTo(1, 12);
    });
  });
});
