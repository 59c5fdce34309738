import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { setPassSeconds } from '../../../app/web/state/edits/pass-edits.ts';
import { movePassEdge, type PassEdge } from '../../../app/web/state/edits/pass-times.ts';
import { changeFrame, changePass } from '../../../app/web/state/edits/within.ts';
import { litFrom } from '../../../core/passes/lit-from.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Pass, Setup } from '../../../core/setup/schema/setup.ts';
import { placeOnPath } from '../../../core/world/world.ts';

const jetty = parseSetup(readFileSync('assets/setups/timber-jetty.json', 'utf8'));
/** Walked from 2 to 50 s in a frame of 52 s, by two waypoints. */
const walked = (setup: Setup): { place: { schemeId: string; frameId: string; passId: string }; pass: Pass } => {
  const scheme = setup.schemes.find(({ id }) => id === 'walk');
  const frame = scheme?.frames.find(({ passes }) => passes.length > 0);
  const pass = frame?.passes[0];
  if (!scheme || !frame || !pass) throw new Error('the jetty has no walked pass');
  return { place: { schemeId: scheme.id, frameId: frame.id, passId: pass.id }, pass };
};
const { place, pass: original } = walked(jetty);
const asFile = (setup: Setup) => parseSetup(formatSetup(setup));
const shareOf = ({ waypoints, on, off }: Pass, share: number) =>
  placeOnPath(
    waypoints.map(({ time, position, aim }) => ({ seconds: time, position, aim })),
    on + (off - on) * share,
  );

describe('movePassEdge', () => {
  it.each<[PassEdge, number, readonly [number, number]]>([
    ['on', 10, [10, 50]],
    ['off', 30, [2, 30]],
    ['whole', 0, [0, 48]],
    // held within the frame of 52 s, at full length
    ['whole', 40, [4, 52]],
    ['whole', -3, [0, 48]],
    ['off', 99, [2, 52]],
    // an end stops short of the other
    ['on', 60, [49.99, 50]],
    ['off', 1, [2, 2.01]],
  ])('%s at %d s', (edge, seconds, [on, off]) => {
    const moved = movePassEdge(jetty, place, edge, seconds);
    const { pass } = walked(moved);
    expect(pass.on).toBeCloseTo(on, 9);
    expect(pass.off).toBeCloseTo(off, 9);
    expect(asFile(moved)).toEqual(moved);
  });

  it('is the same setup where nothing moves', () => {
    expect(movePassEdge(jetty, place, 'on', 2)).toBe(jetty);
    expect(movePassEdge(jetty, place, 'whole', 2)).toBe(jetty);
    expect(movePassEdge(jetty, { ...place, passId: 'gone' }, 'on', 5)).toBe(jetty);
  });
});

describe('a way that is moved and stretched', () => {
  it('has the lamp at the same place at every share of its on-time (abs 1e-6 m)', () => {
    const time = fc.double({ min: 0, max: 52, noNaN: true });
    fc.assert(
      fc.property(
        fc.uniqueArray(time, { minLength: 2, maxLength: 6, selector: (t) => Math.round(t * 100) }),
        fc.tuple(time, time).filter(([a, b]) => Math.abs(a - b) > 0.1),
        fc.tuple(time, time).filter(([a, b]) => Math.abs(a - b) > 0.1),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (times, was, wanted, share) => {
          const [[on, off], [to, end]] = [was, wanted].map((pair) => [...pair].sort((a, b) => a - b)) as [
            [number, number],
            [number, number],
          ];
          const waypoints = times
            .sort((a, b) => a - b)
            .map((t, i) => ({
              time: t,
              position: [i, t / 10, 1] as [number, number, number],
              aim: [0, 30, i % 2] as [number, number, number],
            }));
          const before: Pass = { ...original, on, off, waypoints };
          const after = litFrom(before, to, end);
          const [a, b] = [shareOf(before, share), shareOf(after, share)];
          a.position.forEach((v, i) => {
            expect(b.position[i]).toBeCloseTo(v, 6);
          });
          a.aim.forEach((v, i) => {
            expect(b.aim[i]).toBeCloseTo(v, 6);
          });
          after.waypoints.forEach((waypoint, i) => {
            expect(waypoint.time).toBeGreaterThan(after.waypoints[i - 1]?.time ?? -1);
          });
        },
      ),
      { seed: 11, numRuns: 300 },
    );
  });

  it('goes along with a new count and with a shorter shutter', () => {
    const { frameId, schemeId } = place;
    for (const changed of [
      setPassSeconds(jetty, place, 12),
      setFrameNumber(jetty, { schemeId, frameId }, 'seconds', 15),
    ]) {
      const { pass } = walked(changed);
      expect(pass.off - pass.on).toBeLessThan(16);
      for (const share of [0, 0.25, 1])
        shareOf(original, share).position.forEach((v, i) => {
          expect(shareOf(pass, share).position[i]).toBeCloseTo(v, 6);
        });
      expect(asFile(changed)).toEqual(changed);
    }
  });

  it('leaves the one place of a lamp that stands alone', () => {
    const standing = changePass(jetty, place, (pass) => ({ ...pass, waypoints: pass.waypoints.slice(0, 1) }));
    const moved = movePassEdge(standing, place, 'on', 20);
    expect(walked(moved).pass.waypoints).toBe(walked(standing).pass.waypoints);
  });

  it('is held in a frame shorter than a hundredth of a second', () => {
    const short = changeFrame(jetty, place, (frame) => ({
      ...frame,
      seconds: 0.004,
      passes: frame.passes.map((pass) => litFrom(pass, 0, 0.004)),
    }));
    for (const edge of ['on', 'off', 'whole'] as const)
      for (const seconds of [0, 0.002, 5]) {
        const moved = movePassEdge(short, place, edge, seconds);
        expect(asFile(moved)).toEqual(moved);
      }
  });
});
