import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { splitFrame } from '../../../app/web/state/edits/split-frame.ts';
import { setWalking } from '../../../app/web/state/edits/walking-edits.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';

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

  it('is not split before its first pass: refused in words', () => {
    expect(() => splitFrame(tree, { ...place, passId: 'left' }, 37)).toThrow(EditRefused);
  });
});
