import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loggedCount } from '../../../../app/web/state/edits/night-photo-edits.ts';
import { takeCounts } from '../../../../app/web/state/edits/test-shot-edits.ts';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Frame, Night, Pass, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../../core/world/world.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const scheme = stones.schemes[0] as Scheme;
const frame = scheme.frames[1] as Frame;
const pass = frame.passes[0] as Pass;
const place = { schemeId: scheme.id, frameId: frame.id };
const lightOf = (setup: Setup) => buildWorld(setup, setup.schemes[0] as Scheme).frames[1]?.lights[0];

const night = (startedAt: string, seconds: readonly number[]): Night => ({
  id: `night-${startedAt.slice(0, 10)}`,
  startedAt,
  schemeId: scheme.id,
  schemeName: scheme.name,
  note: '',
  photos: [],
  runs: seconds.map((each) => ({
    at: startedAt,
    frameId: frame.id,
    frameName: frame.name,
    passId: pass.id,
    passName: pass.name,
    seconds: each,
    strokes: 1,
    distanceTimes: 1,
    hoursMoved: 0,
    heightTimes: 1,
    levelTimes: 1,
    verdict: 'not-said',
  })),
});

describe('the count that was held in a test frame', () => {
  it('is what the prediction goes by: half the count, half the light of the pass', () => {
    const half = takeCounts(stones, place, [{ passId: pass.id, seconds: (pass.off - pass.on) / 2 }]);
    const [before, after] = [lightOf(stones), lightOf(half)];
    expect(after?.seconds).toBeCloseTo((before?.seconds ?? 0) / 2, 6);
    expect(after?.strength).toEqual(before?.strength);
  });

  it('as planned changes nothing, and no pass outlasts its shutter', () => {
    expect(takeCounts(stones, place, [{ passId: pass.id, seconds: pass.off - pass.on }])).toBe(stones);
    const long = takeCounts(stones, place, [{ passId: pass.id, seconds: 500 }]);
    expect(long.schemes[0]?.frames[1]?.passes[0]?.off).toBeLessThanOrEqual(frame.seconds);
  });

  it('is offered from the log of a night within a day of the photo: the last try of that pass', () => {
    const setup = { ...stones, nights: [night('2026-10-09T22:30', [8, 4]), night('2026-10-20T21:00', [2])] };
    expect(loggedCount(setup, scheme.id, pass.id, '2026-10-09T22:41:07')).toBe(4);
    expect(loggedCount(setup, scheme.id, 'another', '2026-10-09T22:41:07')).toBeNull();
    expect(loggedCount(setup, scheme.id, pass.id, '2026-11-29T22:41:07')).toBeNull();
    expect(loggedCount(stones, scheme.id, pass.id, '2026-10-09T22:41:07')).toBeNull();
  });
});
