import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { saturationRatio } from '../../../core/camera/exposure.ts';
import { blendEntries } from '../../../core/setup/blend-entries.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { traceBlend } from '../../../core/trace/blend.ts';
import { maskOf } from '../../../core/trace/mask.ts';
import { OrderedPictures, stepsOf } from '../../../core/trace/ordered-pictures.ts';
import { developPicture, tracePicture } from '../../../core/trace/picture.ts';
import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import { buildWorld, type World, type WorldFrame } from '../../../core/world/world.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const [scheme] = stones.schemes as [Scheme, ...Scheme[]];
const size = { width: 96, height: 64 };

const orderOf = (setup: Setup, samples = 1, isBlend = false): PictureOrder => {
  const [own] = setup.schemes as [Scheme, ...Scheme[]];
  const { stage, frames, bounces } = buildWorld(setup, own);
  const { pixelsWide } = setup.camera.sensor;
  const shown = isBlend
    ? blendEntries(own).map((entry) => ({
        frame: frames.find(({ id }) => id === entry.frame.id) as WorldFrame,
        weight: entry.weight,
        mask: maskOf(entry, stage),
        featherShare: entry.featherPixels / pixelsWide,
      }))
    : [{ frame: frames.at(-1) as WorldFrame, weight: 1, mask: null, featherShare: 0 }];
  const picture = {
    name: 'picture',
    shown: { frames: shown, mode: own.blend.mode, bounces },
    against: null,
    isMap: false,
    marksFull: false,
  } as const;
  return { stage, pictures: [picture], size, samples };
};

/** All steps of an order, and how often it went on between them. */
const drawn = (pictures: OrderedPictures, order: PictureOrder): { steps: DrawnStep[]; pauses: number } => {
  const all = [...pictures.draw(order, () => null)];
  return { steps: all.filter((step) => step !== null), pauses: all.filter((step) => step === null).length };
};
const bytesOf = ({ pictures }: DrawnStep): number[] => [...(pictures[0]?.bytes ?? [])].filter((_, i) => i % 4 < 3);
/** Rows of pixels were traced, and not only mixed and developed anew. */
const traced = ({ pauses }: { pauses: number }) => pauses > 1;

const expectAlike = (ours: readonly number[], reference: ArrayLike<number>): void => {
  expect(ours.length).toBe(reference.length);
  // sums in another order may round a byte the other way
  expect(ours.every((v, i) => Math.abs(v - (reference[i] as number)) <= 1)).toBe(true);
  expect(Math.max(...ours)).toBeGreaterThan(60);
};

describe('OrderedPictures', () => {
  const world: World = buildWorld(stones, scheme);

  it('draws a frame as the reference does, to a byte, sample by sample', () => {
    const { steps } = drawn(new OrderedPictures(), orderOf(stones, 4));
    expect(steps.map(({ samples }) => samples)).toEqual([1, 2, 4]);
    for (const step of steps) {
      const frame = world.frames.at(-1) as WorldFrame;
      const linear = tracePicture(world, frame, { ...size, samples: step.samples });
      expectAlike(bytesOf(step), developPicture(linear, 'soft'));
    }
    expect(steps.at(-1)?.progress).toBe(1);
  });

  it('draws a blend with a soft mask as the reference does, to a byte', () => {
    const blend: Scheme['blend'] = {
      mode: 'lighten',
      frames: scheme.frames.map(({ id }, i) => ({
        frameId: id,
        weight: 1,
        where: i === 0 ? ('sky' as const) : ('land' as const),
        subjectId: null,
        featherPixels: 300,
      })),
    };
    const masked: Setup = { ...stones, schemes: [{ ...scheme, blend }] };
    const { steps } = drawn(new OrderedPictures(), orderOf(masked, 4, true));
    const [own] = masked.schemes as [Scheme];
    const linear = traceBlend(buildWorld(masked, own), own, stones.camera.sensor.pixelsWide, { ...size, samples: 4 });
    expectAlike(bytesOf(steps.at(-1) as DrawnStep), developPicture(linear, 'soft'));
  });

  it('a map of two frames’ difference has the light of both, as the reference traces it (rel 1e-6), and no bytes', () => {
    const order = orderOf(stones);
    const [picture] = order.pictures as [(typeof order.pictures)[0]];
    const frame = world.frames.at(-1) as WorldFrame;
    const unlit = { ...frame, lights: frame.lights.filter(({ source }) => source.kind !== 'lamp') };
    const against = { ...picture.shown, frames: [{ frame: unlit, weight: 1, mask: null, featherShare: 0 }] };
    const mapOf = (other: typeof against | null) => {
      const pictures = [{ ...picture, isMap: true, against: other }];
      return drawn(new OrderedPictures(), { ...order, pictures }).steps[0]?.pictures[0];
    };
    const both = mapOf(against);
    expect(both?.bytes).toBeNull();
    const expectLight = (ours: Float32Array | null | undefined, shown: WorldFrame) => {
      const reference = tracePicture(world, shown, { ...size, samples: 1 });
      expect(ours?.length).toBe(reference.length);
      expect(reference.every((v, i) => Math.abs((ours?.[i] as number) - v) <= 1e-6 * Math.max(v, 1e-3))).toBe(true);
      expect(reference.some((v) => v > 0)).toBe(true);
    };
    expectLight(both?.linear, frame);
    expectLight(both?.against, unlit);
    expect(mapOf(null)?.against).toBeNull();
  });

  it('marks every second pixel, as on a chessboard, where a channel is full, and no other', () => {
    const order = orderOf({
      ...stones,
      schemes: [
        {
          ...scheme,
          frames: scheme.frames.map((frame) => ({ ...frame, iso: 12800, aperture: 1.4 })),
        },
      ],
    });
    const bytesWhere = (marksFull: boolean) => {
      const pictures = order.pictures.map((picture) => ({ ...picture, marksFull }));
      return bytesOf(drawn(new OrderedPictures(), { ...order, pictures }).steps[0] as DrawnStep);
    };
    const [plain, marked] = [bytesWhere(false), bytesWhere(true)];
    const shown = order.pictures[0]?.shown.frames[0]?.frame as WorldFrame;
    const linear = tracePicture(world, shown, { ...size, samples: 1 });
    const full = Array.from({ length: size.width * size.height }, (_, p) =>
      [0, 1, 2].some((c) => (linear[3 * p + c] as number) >= saturationRatio),
    );
    const isWhite = (p: number) => ((p % size.width) + Math.floor(p / size.width)) % 2 === 0;
    const expected = plain.map((byte, i) => {
      const p = Math.floor(i / 3);
      return full[p] && isWhite(p) ? 15 : byte;
    });
    expect(full.filter((is) => is).length).toBeGreaterThan(50);
    expect(full.filter((is) => !is).length).toBeGreaterThan(50);
    expect(marked).toEqual(expected);
  });

  it('what was drawn before begins again with its finest step', () => {
    const pictures = new OrderedPictures();
    const order = { ...orderOf(stones), size: { width: 99, height: 66 } };
    const widths = (steps: readonly DrawnStep[]) => steps.map((step) => step.pictures[0]?.width);
    expect(widths(drawn(pictures, order).steps)).toEqual([96, 99]);
    const again = drawn(pictures, order);
    expect(widths(again.steps)).toEqual([99]);
    expect(traced(again)).toBe(false);
  });

  it('grows from 96 pixels wide to at most 480, then to eight samples', () => {
    expect(stepsOf({ size: { width: 1280, height: 854 }, samples: 64 }).map((s) => [s.width, s.samples])).toEqual([
      [96, 1],
      [240, 1],
      [480, 1],
      [480, 2],
      [480, 4],
      [480, 8],
    ]);
    expect(stepsOf({ size: { width: 60, height: 40 }, samples: 1 })).toEqual([{ width: 60, height: 40, samples: 1 }]);
  });

  it('level, gel and exposure trace nothing; a moved lamp traces; a picture given up is taken up again', () => {
    const pictures = new OrderedPictures();
    expect(traced(drawn(pictures, orderOf(stones)))).toBe(true);
    const changed = (change: (pass: { levelPercent: number; waypoints: { position: number[] }[] }) => void): Setup => {
      const copy = structuredClone(stones) as Setup;
      const kept = { ...copy, subjects: stones.subjects, ground: stones.ground, scans: stones.scans };
      change(kept.schemes[0]?.frames.at(-1)?.passes[0] as never);
      return kept;
    };
    const dimmed = drawn(
      pictures,
      orderOf(
        changed((pass) => {
          pass.levelPercent /= 4;
        }),
      ),
    );
    expect(traced(dimmed)).toBe(false);
    const moved = orderOf(
      changed((pass) => {
        (pass.waypoints[0] as { position: number[] }).position[0] = -3;
      }),
    );
    const givenUp = pictures.draw(moved, () => null);
    for (let i = 0; i < 20; i++) expect(givenUp.next().value).toBeNull();
    const again = drawn(pictures, moved);
    expect(traced(again)).toBe(true);
    expect(traced(drawn(pictures, moved))).toBe(false);
    const fresh = drawn(new OrderedPictures(), moved);
    expect(bytesOf(again.steps[0] as DrawnStep)).toEqual(bytesOf(fresh.steps[0] as DrawnStep));
    expect(bytesOf(again.steps[0] as DrawnStep)).not.toEqual(bytesOf(dimmed.steps[0] as DrawnStep));
  });
});
