import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newLamps } from '../../../app/web/inspector/new-lamps.ts';
import {
  addPass,
  duplicateScheme,
  removeScheme,
  renameScheme,
  setFrameNumber,
  setWhiteBalance,
} from '../../../app/web/state/edits/frame-edits.ts';
import {
  addLamp,
  setLampBeam,
  setLampKelvin,
  setLampOutput,
  setLowestLevel,
} from '../../../app/web/state/edits/lamp-edits.ts';
import { moveSubject, turnSubject } from '../../../app/web/state/edits/move-subjects.ts';
import {
  aimPass,
  duplicatePass,
  movePass,
  removePass,
  setPassGels,
  setPassHeld,
  setPassLevel,
  setPassName,
  setPassSeconds,
} from '../../../app/web/state/edits/pass-edits.ts';
import { aimCamera, moveCamera } from '../../../app/web/state/edits/place-edits.ts';
import { freshId } from '../../../app/web/state/edits/within.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Lamp, Pass, Position, Setup } from '../../../core/setup/schema/setup.ts';
import { stageOf } from '../../../core/world/stage.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const place = { schemeId: 'side', frameId: 'painted', passId: 'key' };
const passOf = (setup: Setup): Pass => setup.schemes[0]?.frames[1]?.passes[0] as Pass;

describe('edits of a pass', () => {
  it('moving keeps the aim and leaves everything else shared, the stage too', () => {
    const moved = movePass(stones, place, [1, 2, 3]);
    expect(passOf(moved).waypoints[0]).toEqual({ ...passOf(stones).waypoints[0], position: [1, 2, 3] });
    expect(moved.subjects).toBe(stones.subjects);
    expect(moved.schemes[1]).toBe(stones.schemes[1]);
    expect(stageOf(moved)).toBe(stageOf(stones));
    expect(passOf(stones).waypoints[0]?.position).not.toEqual([1, 2, 3]);
  });

  it('moving onto the aim is refused', () => {
    expect(movePass(stones, place, passOf(stones).waypoints[0]?.aim as Position)).toBe(stones);
  });

  it('a count longer than what is left starts earlier; longer than the frame is cut to the frame', () => {
    expect(passOf(setPassSeconds(stones, place, 9.5))).toMatchObject({ on: 0.5, off: 10 });
    expect(passOf(setPassSeconds(stones, place, 99))).toMatchObject({ on: 0, off: 10 });
  });

  it('a count at the frame’s end never rounds past it (frame 85.7 s, count 21.4 s: 64.3 + 21.4 > 85.7 in doubles)', () => {
    const long = setFrameNumber(stones, place, 'seconds', 85.7);
    const late = setPassSeconds(long, place, 85.7);
    const squeezed = passOf(setPassSeconds(late, place, 21.4));
    expect(squeezed.off).toBeLessThanOrEqual(85.7);
    for (let seconds = 0.1; seconds < 85.7; seconds += 0.37)
      expect(passOf(setPassSeconds(late, place, seconds)).off).toBeLessThanOrEqual(85.7);
  });

  it('a shorter frame squeezes its passes', () => {
    const short = setFrameNumber(stones, place, 'seconds', 4);
    expect(passOf(short)).toMatchObject({ on: 0, off: 4 });
  });
});

describe('any run of edits', () => {
  const coordinate = fc.double({ min: -9000, max: 9000, noNaN: true });
  const position = fc.tuple(coordinate, coordinate, fc.double({ min: -900, max: 4000, noNaN: true }));
  const gel = { name: 'x', shiftMired: 100, transmission: 0.5, colour: null };
  const edit: fc.Arbitrary<(setup: Setup) => Setup> = fc.oneof(
    position.map((p) => (s: Setup) => movePass(s, place, p)),
    position.map((p) => (s: Setup) => aimPass(s, place, p)),
    position.map((p) => (s: Setup) => moveCamera(s, 'side', p)),
    position.map((p) => (s: Setup) => aimCamera(s, 'side', p)),
    position.map((p) => (s: Setup) => moveSubject(s, 'stone-2', p)),
    fc.double({ min: 0.01, max: 500, noNaN: true }).map((v) => (s: Setup) => setPassSeconds(s, place, v)),
    fc.double({ min: 0.001, max: 500, noNaN: true }).map((v) => (s: Setup) => setFrameNumber(s, place, 'seconds', v)),
    fc.double({ min: 0.7, max: 64, noNaN: true }).map((v) => (s: Setup) => setFrameNumber(s, place, 'aperture', v)),
    fc.integer({ min: 2000, max: 12000 }).map((v) => (s: Setup) => setWhiteBalance(s, place, v)),
    fc.integer({ min: 1667, max: 25000 }).map((v) => (s: Setup) => setLampKelvin(s, 'torch', v)),
    fc.integer({ min: 0, max: 100 }).map((v) => (s: Setup) => setLowestLevel(setPassLevel(s, place, v), 'torch', v)),
    fc.integer({ min: 1, max: 170 }).map((v) => (s: Setup) => setLampBeam(s, 'torch', { shape: 'flood', degrees: v })),
    fc
      .integer({ min: 1, max: 9000 })
      .map((v) => (s: Setup) => setLampOutput(s, 'torch', { from: 'beam-distance', distanceMetres: v })),
    fc.integer({ min: -360, max: 360 }).map((v) => (s: Setup) => turnSubject(s, 'stone-1', v)),
    fc.constantFrom<(setup: Setup) => Setup>(
      (s) => duplicatePass(s, place),
      (s) => removePass(s, place),
      (s) => duplicateScheme(s, 'side').setup,
      (s) => removeScheme(s, 'front'),
      (s) => renameScheme(s, 'side', 'Other'),
      (s) => setPassGels(s, place, [gel, gel]),
      (s) => setPassHeld(setPassName(s, place, 'Other'), place, 'stand'),
      (s) => addPass(s, place, { ...passOf(stones), id: freshId(s.schemes[0]?.frames[1]?.passes ?? [], 'added') }),
      ...(Object.values(newLamps) as Lamp[]).map((lamp) => (s: Setup) => addLamp(s, lamp).setup),
    ),
  );

  it('leaves a setup that can be saved and read back unchanged (400 runs, seed 5)', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 12 }), (edits) => {
        const edited = edits.reduce((setup, apply) => apply(setup), stones);
        expect(parseSetup(formatSetup(edited))).toEqual(edited);
      }),
      { numRuns: 400, seed: 5 },
    );
  });
});
