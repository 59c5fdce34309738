import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  addTestShot,
  forgetTestShots,
  mostTestShots,
  removeTestShot,
} from '../../../../app/web/state/edits/lamp-shots.ts';
import { correctCounts, takePhotoSettings } from '../../../../app/web/state/edits/test-shot-edits.ts';
import { countChanges } from '../../../../app/web/testshot/count-changes.ts';
import { shotOutcome } from '../../../../app/web/testshot/shot-outcome.ts';
import { parseSetup, validateSetup } from '../../../../core/setup/parse-setup.ts';
import type { Frame, Lamp, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { photoSettings } from '../../../../core/testshot/photo-settings.ts';
import { buildWorld } from '../../../../core/world/world.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const scheme = stones.schemes[0] as Scheme;
const frame = scheme.frames[1] as Frame;
const lampOf = (setup: Setup): Lamp => setup.lamps[0] as Lamp;
const { id: lampId } = lampOf(stones);
const place = { schemeId: scheme.id, frameId: frame.id };
const shot = (stops: number) => ({ at: '2026-10-09T22:41:07', stops, uncertaintyStops: 0.3 });
const lightOf = (setup: Setup) => buildWorld(setup, setup.schemes[0] as Scheme).frames[1]?.lights[0];

describe('test shots kept with a lamp', () => {
  it('correct it by their median; one taken back, or all of them, counts no more; the setup stays good', () => {
    const one = addTestShot(stones, lampId, shot(-0.8));
    const three = addTestShot(addTestShot(one, lampId, shot(-2)), lampId, shot(-0.9));
    expect(lampOf(one).correctionStops).toBe(-0.8);
    expect(lampOf(three).correctionStops).toBe(-0.9);
    expect(validateSetup(JSON.parse(JSON.stringify(three)))).toEqual(three);
    expect(lampOf(removeTestShot(three, lampId, 1)).correctionStops).toBe(-0.85);
    expect(lampOf(forgetTestShots(three, lampId))).toEqual(lampOf(stones));
  });

  it('the oldest make room for more than it keeps', () => {
    const all = Array.from({ length: 30 }, (_, i) => i / 100).reduce((s, v) => addTestShot(s, lampId, shot(v)), stones);
    expect(lampOf(all).testShots.map(({ stops }) => stops)).toEqual(
      Array.from({ length: mostTestShots }, (_, i) => (i + 6) / 100),
    );
  });

  it('a correction of -1 stop halves the light and leaves the source, so that nothing is traced anew', () => {
    const [before, after] = [lightOf(stones), lightOf(addTestShot(stones, lampId, shot(-1)))];
    expect(after?.source).toEqual(before?.source);
    expect(after?.strength).toHaveLength(3);
    for (const c of [0, 1, 2] as const) expect(after?.strength[c]).toBeCloseTo((before?.strength[c] as number) / 2, 10);
  });
});

describe('takePhotoSettings', () => {
  it('gives the frame what the photo says; what it does not say stays', () => {
    const taken = takePhotoSettings(stones, place, photoSettings({ exposureTime: 20, fNumber: 4 }));
    expect(taken.schemes[0]?.frames[1]).toMatchObject({ seconds: 20, aperture: 4, iso: frame.iso });
  });
  it('the same setup comes back where the frame has it all', () => {
    const { seconds, aperture, iso } = frame;
    const same = photoSettings({ exposureTime: seconds, fNumber: aperture, photographicSensitivity: iso });
    expect(takePhotoSettings(stones, place, same)).toBe(stones);
  });
});

describe('a lamp that stands lit for as long as the shutter is open', () => {
  const arch = parseSetup(readFileSync('assets/setups/natural-arch.json', 'utf8'));
  it('follows the shutter of the photo, longer and shorter; the others are squeezed only', () => {
    const where = arch.schemes.flatMap((s) => s.frames.map((f) => ({ s, f })));
    const standing = where.find(({ f }) =>
      f.passes.some((p) => p.held === 'stand' && p.on === 0 && p.off === f.seconds),
    );
    if (!standing) throw new Error('no such lamp');
    const at = { schemeId: standing.s.id, frameId: standing.f.id };
    for (const seconds of [2 * standing.f.seconds, standing.f.seconds / 2]) {
      const taken = takePhotoSettings(arch, at, photoSettings({ exposureTime: seconds }));
      expect(validateSetup(JSON.parse(JSON.stringify(taken)))).toEqual(taken);
      const now = taken.schemes
        .find(({ id }) => id === at.schemeId)
        ?.frames.find(({ id }) => id === at.frameId) as Frame;
      now.passes.forEach((pass, i) => {
        const before = standing.f.passes[i] as Frame['passes'][number];
        const stands = before.held === 'stand' && before.on === 0 && before.off === standing.f.seconds;
        expect(pass.off - pass.on).toBeCloseTo(stands ? seconds : Math.min(before.off - before.on, seconds), 9);
      });
    }
  });
});

describe('a count that makes up for the lamp', () => {
  const held = { ...frame, seconds: 30 };
  const pass = held.passes[0] as Frame['passes'][number];
  const length = pass.off - pass.on;

  it('is longer by as much as the lamp is weaker, and the dose stays (rel 1 %)', () => {
    const longer = { ...stones, schemes: [{ ...scheme, frames: [scheme.frames[0] as Frame, held] }] };
    const counts = countChanges(held, lampId, -0.8) ?? [];
    expect(counts).toHaveLength(1);
    const counted = counts.map(({ passId, to }) => ({ place: { ...place, passId }, seconds: to }));
    const corrected = correctCounts(longer, lampId, shot(-0.8), counted);
    const dose = (setup: Setup) => {
      const light = lightOf(setup);
      return (light?.strength[1] as number) * (light?.seconds as number);
    };
    expect(counts[0]?.to).toBeCloseTo(length * 2 ** 0.8, 1);
    expect(Math.abs(dose(corrected) / dose(longer) - 1)).toBeLessThan(0.01);
  });

  it('goes by what the median moves: after three shots at -1 a fourth at -2 leaves lamp and count as they are', () => {
    const three = [-1, -1, -1].reduce((s, stops) => addTestShot(s, lampId, shot(stops)), stones);
    const found = { stops: -1, uncertaintyStops: 0.3, share: 1 };
    const fourth = shotOutcome(lampOf(three), held, found, null);
    expect(fourth.verdict.stops).toBe(-2);
    expect(fourth.after.correctionStops).toBe(-1);
    expect(fourth.counts).toEqual([]);
    // a second shot moves the median by half of what it says, and the count by as much
    const one = addTestShot(stones, lampId, shot(-0.2));
    const second = shotOutcome(lampOf(one), held, { ...found, stops: -0.4, uncertaintyStops: 0.1 }, null);
    expect(second.after.correctionStops).toBe(-0.4);
    expect(second.counts?.[0]?.to).toBeCloseTo(length * 2 ** 0.2, 1);
  });

  it('is not offered where the frame does not hold it, or the lamp stays lit', () => {
    expect(countChanges({ ...frame, seconds: length + 1 }, lampId, -2)).toBeNull();
    expect(countChanges({ ...held, passes: [{ ...pass, on: 0, off: 30 }] }, lampId, 1)).toBeNull();
    expect(countChanges({ ...held, passes: [] }, lampId, 1)).toBeNull();
  });
});
