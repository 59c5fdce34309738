import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { WalkLine } from '../../../core/readings/walk-lines.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { detourRatio } from '../../../core/walk/walk.ts';
import { onePassSetup } from '../support/scenes.ts';

const reach = 0.45;
const camera = { position: [0, -20, 1.5], aim: [0, 0, 1.5] };
/** A lamp aimed north: its holder stands `reach` south of it. */
const at = (east: number) => ({ position: [east, 0, 1], aim: [east, 5, 1] });
const walksOf = (pass: object, passes: readonly object[] = [], frame: object = {}): readonly WalkLine[] => {
  const setup = onePassSetup({ camera, pass, passes, frame: { seconds: 60, delaySeconds: 10, ...frame } });
  return reportScheme(setup, setup.schemes[0] as never).walks;
};

const expectAt = (place: readonly number[] | undefined, east: number, north: number) => {
  expect(place?.[0]).toBeCloseTo(east, 9);
  expect(place?.[1]).toBeCloseTo(north, 9);
};

describe('walkLines', () => {
  it('of one pass lead from behind the camera to behind the lamp, a fifth farther, and back; the delay runs meanwhile', () => {
    const [out, back, ...rest] = walksOf({ on: 3, off: 5, waypoints: [at(6)] });
    expect(rest).toEqual([]);
    expect(out).toMatchObject({ from: null, to: { frameId: 'frame', passId: 'pass' } });
    // from 0.45 m behind the lens, 20.45 m south, to 0.45 m south of the lamp
    expect(out?.metres).toBeCloseTo(detourRatio * Math.hypot(6, 20), 9);
    expect(out?.seconds).toBeCloseTo((out?.metres ?? 0) / 0.8, 9);
    expect(out?.availableSeconds).toBeCloseTo(13, 12);
    expectAt(out?.points[0], 0, -20 - reach);
    expectAt(out?.points.at(-1), 6, -reach);
    expect(back).toMatchObject({ to: null, availableSeconds: null, metres: out?.metres });
  });

  it('lead on from pass to pass by the clock, and round by the last', () => {
    const later = { id: 'later', name: 'later', lampId: 'torch', on: 40, off: 42, waypoints: [at(-6)] };
    const walks = walksOf({ on: 3, off: 5, waypoints: [at(6)] }, [later]);
    expect(walks.map(({ from, to }) => [from?.passId, to?.passId])).toEqual([
      [undefined, 'pass'],
      ['pass', 'later'],
      ['later', undefined],
    ]);
    expect(walks[1]?.metres).toBeCloseTo(12 * detourRatio, 9);
    expect(walks[1]?.availableSeconds).toBeCloseTo(35, 12);
  });

  it('lead back to the camera and out again where a frame is set otherwise than the one before', () => {
    const setup = onePassSetup({ camera, pass: { on: 3, off: 5, waypoints: [at(6)] }, frame: { seconds: 60 } });
    const [scheme] = setup.schemes as [Setup['schemes'][number]];
    const [frame] = scheme.frames as [Setup['schemes'][number]['frames'][number]];
    const later = { ...frame, id: 'later', delaySeconds: 30 };
    const walks = (iso: number) =>
      reportScheme(setup, { ...scheme, frames: [frame, { ...later, iso }] }).walks.map(
        ({ from, to, availableSeconds }) => [from?.frameId ?? 'camera', to?.frameId ?? 'camera', availableSeconds],
      );
    expect(walks(2 * frame.iso)).toEqual([
      ['camera', 'frame', 3 + frame.delaySeconds],
      ['frame', 'camera', null],
      ['camera', 'later', 33],
      ['later', 'camera', null],
    ]);
    // a shutter of a minute is one of 60 s
    expect(walks(frame.iso)[1]).toEqual(['frame', 'later', 60 - 5 + 30 + 3]);
  });

  it('of a walked lamp end where it does: after an odd number of strokes at the far end, after an even one where it began', () => {
    const waypoints = [
      { time: 2, ...at(0) },
      { time: 6, ...at(6) },
    ];
    const [odd] = walksOf({ on: 2, off: 6, waypoints }).slice(-1);
    expectAt(odd?.points[0], 6, -reach);
    const [even] = walksOf({ on: 2, off: 10, strokes: 2, waypoints }).slice(-1);
    expectAt(even?.points[0], 0, -reach);
  });

  it('name what they lead through and what they go round, each of them alike', () => {
    const later = { id: 'later', name: 'later', lampId: 'torch', on: 40, off: 42, waypoints: [at(-6)] };
    const setup = onePassSetup({
      camera,
      pass: { on: 3, off: 5, waypoints: [at(6)] },
      passes: [later],
      frame: { seconds: 60, delaySeconds: 10 },
    });
    const hazards = [
      // on the way from the first lamp to the second, which goes round it
      { id: 'pit', name: 'Pit', position: [0, -reach], radiusMetres: 1 },
      // round the camera, from which the first walk starts and to which the last leads
      { id: 'bog', name: 'Bog', position: [0, -20 - reach], radiusMetres: 1.5 },
      // half-way from the camera to the first lamp
      { id: 'pond', name: 'Pond', position: [3, -10 - reach], radiusMetres: 1 },
    ];
    const { walks } = reportScheme({ ...setup, hazards } as never, setup.schemes[0] as never);
    expect(walks.map(({ hazardIds, roundHazardIds }) => [hazardIds, roundHazardIds])).toEqual([
      [['bog'], ['pond']],
      [[], ['pit']],
      [['bog'], []],
    ]);
  });

  it('are none where all lamps stand', () => {
    expect(walksOf({ held: 'stand', waypoints: [at(6)] })).toEqual([]);
  });
});
