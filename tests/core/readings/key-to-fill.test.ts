import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { bestDose, type FaceDoses, keyToFill, type PassDose } from '../../../core/readings/key-to-fill.ts';
import { sightOf } from '../../../core/readings/sight.ts';
import type { Frame, Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { relativeError } from '../support/errors.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup, subjectOf } from '../support/scenes.ts';

const dose = (passId: string, bestDoseLuxSeconds: number | null, subjectId: string | null = 'stone'): PassDose => ({
  passId,
  subjectId,
  bestDoseLuxSeconds,
});
/** Passes that are aimed at another subject light this one not at all, unless told; nor does the sky. */
const faces = (ofAmbient: FaceDoses['ofAmbient'] = () => null, ofPass: FaceDoses['ofPass'] = () => 0): FaceDoses => ({
  ofPass,
  ofAmbient,
});

describe('keyToFill', () => {
  it.each([
    [2, 1],
    [4, 2],
    [8, 3],
    [1, 0],
  ])('a key of %d times the fill is %d stops over it (exact)', (ratio, stops) => {
    expect(keyToFill([dose('fill', 10), dose('key', 10 * ratio)], faces()).keyToFillStops).toBe(stops);
  });

  it('key is what does most, fill what does next most on the same subject, in whatever order they stand', () => {
    const passes = [dose('low', 1), dose('other', 30, 'tree'), dose('key', 80), dose('fill', 20), dose('dark', 0)];
    const expected = { keyToFillStops: 2, keyPassId: 'key', fillPassId: 'fill' };
    expect(keyToFill(passes, faces())).toEqual(expected);
    expect(keyToFill([...passes].reverse(), faces())).toEqual(expected);
  });

  it('with one pass on the subject the fill is moon and sky on it, asked for by its id', () => {
    const asked: string[] = [];
    const ambient = (id: string) => {
      asked.push(id);
      return 5;
    };
    const found = keyToFill([dose('key', 80), dose('other', 30, 'tree'), dose('dark', 0)], faces(ambient));
    expect(found).toEqual({ keyToFillStops: 4, keyPassId: 'key', fillPassId: null });
    expect(asked).toEqual(['stone']);
  });

  it('a pass aimed at something else is the fill where it does most of the others on that face, or even the key', () => {
    const passes = [dose('key', 80), dose('low', 10), dose('spill', 30, 'tree'), dose('loose', 3, null)];
    const spilling = (spill: number) =>
      keyToFill(
        passes,
        faces(undefined, (id, subject) => (id === 'spill' && subject === 'stone' ? spill : 0)),
      );
    expect(spilling(20)).toEqual({ keyToFillStops: 2, keyPassId: 'key', fillPassId: 'spill' });
    expect(spilling(5)).toEqual({ keyToFillStops: 3, keyPassId: 'key', fillPassId: 'low' });
    expect(spilling(160)).toEqual({ keyToFillStops: 1, keyPassId: 'spill', fillPassId: 'key' });
  });

  it('what the camera sees no light of counts as none: a pass, or the sky', () => {
    const passes = [dose('key', 80), dose('unseen', null), dose('other', 5, 'tree')];
    const expected = { keyToFillStops: null, keyPassId: 'key', fillPassId: null };
    expect(
      keyToFill(
        passes,
        faces(undefined, () => null),
      ),
    ).toEqual(expected);
    expect(
      keyToFill(
        passes,
        faces(
          () => 10,
          () => null,
        ),
      ),
    ).toEqual({ ...expected, keyToFillStops: 3 });
  });

  it('without any fill there is a key and no ratio; without light there is neither', () => {
    expect(
      keyToFill(
        [dose('key', 80)],
        faces(() => 0),
      ),
    ).toEqual({ keyToFillStops: null, keyPassId: 'key', fillPassId: null });
    const none = { keyToFillStops: null, keyPassId: null, fillPassId: null };
    expect(
      keyToFill(
        [dose('dark', 0), dose('unseen', null), dose('nothing', 3, null)],
        faces(() => 1),
      ),
    ).toEqual(none);
    expect(
      keyToFill(
        [],
        faces(() => 1),
      ),
    ).toEqual(none);
  });
});

/** A ball lit from the left; a second pass of the same lamp at the mirrored place on the right. */
const ball = {
  id: 'ball',
  name: 'Ball',
  parts: [{ kind: 'sphere', position: [0, 6, 0.6], radiusMetres: 0.9, sides: 64 }],
};
const left = { position: [-3, 3, 1.5], aim: [0, 6, 1.5] };
const right = { position: [3, 3, 1.5], aim: [0, 6, 1.5] };
const base = onePassSetup({
  camera: { position: [0, 0, 1.5], aim: [0, 6, 1.5] },
  subjects: [ball],
  pass: { off: 8, waypoints: [left] },
});
const withPasses = (...changes: Partial<Pass>[]): Setup => {
  const scheme = base.schemes[0] as Scheme;
  const frame = scheme.frames[0] as Frame;
  const pass = frame.passes[0] as Pass;
  const passes = changes.map((change, i) => ({ ...pass, id: `pass-${i}`, name: `Pass ${i}`, ...change }));
  return { ...base, schemes: [{ ...scheme, frames: [{ ...frame, passes }] }] };
};
const frameOf = (setup: Setup) => {
  const frame = reportScheme(setup, setup.schemes[0] as Scheme).frames[0];
  if (!frame) throw new Error('no frame');
  return frame;
};
const mirrored: Partial<Pass> = { waypoints: [{ time: 0, ...right } as Pass['waypoints'][number]] };

describe('bestDose', () => {
  it('goes with level and seconds in proportion (rel 1e-12)', () => {
    const { world, light } = onlyPassOf(base);
    const face = sightOf(world.stage, world.view).faceLight(0, light.source);
    const once = bestDose([[light, face]]) ?? Number.NaN;
    const [r, g, b] = light.strength;
    const changed = { strength: [r / 4, g / 4, b / 4] as const, seconds: light.seconds * 3 };
    expect(once).toBeGreaterThan(0);
    expect(relativeError(bestDose([[changed, face]]) ?? Number.NaN, (once * 3) / 4)).toBeLessThanOrEqual(1e-12);
    // a light with itself is two of it
    expect(
      relativeError(
        bestDose([
          [light, face],
          [light, face],
        ]) ?? Number.NaN,
        2 * once,
      ),
    ).toBeLessThanOrEqual(1e-12);
  });

  it('is null for a face that is not seen and for no lights', () => {
    expect(bestDose([])).toBeNull();
    expect(bestDose([[{ strength: [1, 1, 1], seconds: 1 }, []]])).toBeNull();
  });
});

describe('keyToFillStops of a frame', () => {
  it.each([
    ['a quarter of the level', { levelPercent: 25 }, 2],
    ['half the level and half the time', { levelPercent: 50, off: 4 }, 2],
    ['the same again', {}, 0],
  ] as const)('a mirrored fill at %s: %o, %d stops under (abs 0.05)', (_, change, stops) => {
    const frame = frameOf(withPasses({}, { ...mirrored, ...change }));
    // the rays' grid is not quite symmetrical
    expect(Math.abs((frame.keyToFillStops ?? Number.NaN) - stops)).toBeLessThanOrEqual(0.05);
    if (stops > 0) expect([frame.keyPassId, frame.fillPassId]).toEqual(['pass-0', 'pass-1']);
  });

  it('one pass against the sky: two stops more of it, two stops more of ratio (abs 1e-9)', () => {
    const [low, high] = [25, 100].map(
      (levelPercent) => frameOf(withPasses({ levelPercent })).keyToFillStops ?? Number.NaN,
    );
    expect((high as number) - (low as number)).toBeCloseTo(2, 9);
  });

  it('a lamp aimed at a post beside the ball, which it lights too, is the ball’s fill', () => {
    const post = { kind: 'box', position: [2.2, 6, 0], widthMetres: 0.2, depthMetres: 0.2, heightMetres: 2 };
    const subjects = [...base.subjects, subjectOf('post', [post])];
    const aimed = { time: 0, position: right.position, aim: [2.2, 5.9, 1.5] } as Pass['waypoints'][number];
    const frame = frameOf({ ...withPasses({}, { waypoints: [aimed], levelPercent: 10 }), subjects });
    expect(frame.passes.map(({ rim }) => rim.subjectId)).toEqual(['ball', 'post']);
    expect(frame).toMatchObject({ keyPassId: 'pass-0', fillPassId: 'pass-1' });
  });

  it('of a frame without passes is null', () => {
    expect(frameOf(withPasses())).toMatchObject({ keyToFillStops: null, keyPassId: null, fillPassId: null });
  });
});
