import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { splitFrame } from '../../../app/web/state/edits/split-frame.ts';
import { setWalking } from '../../../app/web/state/edits/walking-edits.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { placeOnPath } from '../../../core/world/world.ts';

const tree = setWalking(parseSetup(readFileSync('assets/setups/lone-tree.json', 'utf8')), { metresPerSecond: 0.5 });
const schemeIn = (setup: Setup) => setup.schemes.find(({ id }) => id === 'long') as Scheme;
const codes = (setup: Setup) => reportScheme(setup, schemeIn(setup)).cautions.map(({ code }) => code);
const place = { schemeId: 'long', frameId: 'painted', passId: 'right' };
const split = splitFrame(tree, place, 37);

describe('a frame split in two', () => {
  it('keeps all passes and counts, in order, in frames that the parser takes', () => {
    const counts = (setup: Setup) =>
      schemeIn(setup).frames.flatMap(({ passes }) => passes.map(({ id, on, off }) => [id, (off - on).toFixed(6)]));
    expect(counts(split)).toEqual(counts(tree));
    expect(schemeIn(split).frames.map(({ passes }) => passes.length)).toEqual([0, 1, 1]);
    expect(parseSetup(formatSetup(split))).toEqual(split);
  });

  it('is exposed alike, no longer than it needs, after a wait that is longer than the walk', () => {
    const [, first, second] = schemeIn(split).frames;
    expect([first?.aperture, first?.iso, first?.focusMetres]).toEqual([
      second?.aperture,
      second?.iso,
      second?.focusMetres,
    ]);
    for (const frame of [first, second]) {
      const end = frame?.passes[0]?.off ?? 0;
      expect(frame?.seconds).toBeGreaterThanOrEqual(end);
      // to the next marking: a third of a stop is 1.26 times
      expect(frame?.seconds).toBeLessThan(1.4 * (end + 1));
    }
    expect(second?.delaySeconds).toBeGreaterThan(37);
  });

  it.each([130, 250, 400, 1000])('holds passes of %d s whole, in frames that the parser takes', (seconds) => {
    const long = schemeIn(tree).frames.map((frame) => {
      const passes = frame.passes.map((pass, i) => ({ ...pass, on: 1 + i * seconds, off: (i + 1) * seconds }));
      return { ...frame, seconds: passes.length > 0 ? 2 * seconds + 1 : frame.seconds, passes };
    });
    const schemes = tree.schemes.map((scheme) => (scheme.id === 'long' ? { ...scheme, frames: long } : scheme));
    const halves = splitFrame({ ...tree, schemes }, place, 37);
    expect(parseSetup(formatSetup(halves))).toEqual(halves);
    for (const { seconds: shutter, passes } of schemeIn(halves).frames)
      for (const { off } of passes) expect(shutter).toBeGreaterThanOrEqual(off);
  });

  it('makes the caution about the walk go', () => {
    expect(codes(tree)).toContain('cannot-walk');
    expect(codes(split)).not.toContain('cannot-walk');
  });

  it('takes a lamp’s way along from where it is when it goes on, with what came before it cut off', () => {
    const waypoints = [0, 2, 4, 50].map((time) => ({
      time,
      position: [time, -4, 1] as [number, number, number],
      aim: [time, 8, 1] as [number, number, number],
    }));
    const change = (pass: Pass): Pass =>
      pass.id === 'right' ? { ...pass, on: 40, off: 50, waypoints } : { ...pass, on: 1, off: 3 };
    const schemes = tree.schemes.map((scheme) => ({
      ...scheme,
      frames: scheme.frames.map((frame) => ({ ...frame, seconds: 60, passes: frame.passes.map(change) })),
    }));
    const halves = splitFrame({ ...tree, schemes }, place, 37);
    expect(parseSetup(formatSetup(halves))).toEqual(halves);
    const pass = schemeIn(halves).frames[2]?.passes[0] as Pass;
    expect([pass.on, pass.off]).toEqual([1, 11]);
    const path = pass.waypoints.map(({ time, position, aim }) => ({ seconds: time, position, aim }));
    for (const share of [0, 0.5, 1])
      expect(placeOnPath(path, 1 + 10 * share).position[0]).toBeCloseTo(40 + 10 * share, 9);
  });

  it('counts in the blend wherever the frame did, every entry of it', () => {
    const entry = { frameId: 'painted', weight: 1, where: 'ground', subjectId: null, featherPixels: 4 } as const;
    const listed = (count: number): Setup => ({
      ...tree,
      schemes: tree.schemes.map((scheme) => {
        const more = Array.from({ length: count }, () => ({ ...entry, weight: 2, where: 'sky' as const }));
        return scheme.id === 'long' ? { ...scheme, blend: { ...scheme.blend, frames: [entry, ...more] } } : scheme;
      }),
    });
    const halves = splitFrame(listed(1), place, 37);
    const second = schemeIn(halves).frames[2]?.id;
    const of = (frameId: string | undefined) =>
      schemeIn(halves).blend.frames.flatMap((part) => (part.frameId === frameId ? [[part.where, part.weight]] : []));
    expect(of(second)).toEqual([
      ['ground', 1],
      ['sky', 2],
    ]);
    expect(of('painted')).toEqual(of(second));
    expect(parseSetup(formatSetup(halves))).toEqual(halves);
    // as many as the document takes, and one too many
    expect(schemeIn(splitFrame(listed(31), place, 37)).blend.frames).toHaveLength(64);
    expect(() => splitFrame(listed(32), place, 37)).toThrow(/would have 66 entries.* at most 64/);
  });

  it('is not split before its first pass: refused in words', () => {
    expect(() => splitFrame(tree, { ...place, passId: 'left' }, 37)).toThrow(EditRefused);
  });
});
