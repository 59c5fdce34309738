import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Hazard, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { boxAt, cautionsOfSetup, still } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';

const hazard = (east: number, north: number, radiusMetres: number): Hazard => ({
  id: 'bog',
  name: 'Bog',
  position: [east, north],
  radiusMetres,
});
const terrainOf = (setup: Setup, ...hazards: Hazard[]) =>
  cautionsOfSetup({ ...setup, hazards }).filter(({ code }) => code === 'terrain');

/** A lamp 5 m south of a wall, in the hand or on a stand; whoever holds it stands 0.45 m behind it. */
const wall = (held: 'hand' | 'stand'): Setup =>
  onePassSetup({
    camera: { position: [3, -6, 1.5], aim: [0, 0, 1.5] },
    pass: { ...still([0, -5, 1.5], [0, 0, 1.5]), held },
    subjects: [boxAt('wall', [0, 0.5, 0], [4, 1, 3])],
  });

describe('terrain, where one stands', () => {
  it('whoever holds a lamp within it: a danger that tells how far past its edge; gone at its limit', () => {
    // the feet are at [0, -5.45], 3 m from its middle
    const [caution, ...more] = terrainOf(wall('hand'), hazard(-3, -5.45, 3.01));
    expect(more).toEqual([]);
    expect(caution).toMatchObject({ severity: 'danger', passId: 'pass', frameId: 'frame', limit: 3.01 });
    expect(caution?.value).toBeCloseTo(3, 9);
    expect(caution?.message).toMatch(/inside “Bog”, 0\.0 m past its edge.*by day.*local knowledge decides/);
    expect(terrainOf(wall('hand'), hazard(-3, -5.45, 2.99))).toEqual([]);
    expect(terrainOf(wall('hand'), hazard(-3, -5.45, 4.5))[0]?.message).toContain('1.5 m past its edge');
    // tens of metres are told whole
    const wide = terrainOf(wall('hand'), hazard(-3, -5.45, 15.4)).find(({ passId }) => passId === 'pass');
    expect(wide?.message).toContain('inside “Bog”, 12 m past its edge');
  });

  it('a stand within it: a warning, judged where the stand is; gone at its limit', () => {
    expect(terrainOf(wall('stand'), hazard(-3, -5, 3.01))).toMatchObject([{ severity: 'warning', passId: 'pass' }]);
    expect(terrainOf(wall('stand'), hazard(-3, -5, 2.99))).toEqual([]);
  });

  it('a lamp that is walked through it between two dry places', () => {
    const setup = wall('hand');
    const [scheme] = setup.schemes as [Scheme];
    const walked = scheme.frames.map((frame) => ({
      ...frame,
      passes: frame.passes.map((pass) => ({
        ...pass,
        waypoints: [
          { time: 0, position: [-4, -5, 1.5] as const, aim: [-4, 0, 1.5] as const },
          { time: 1, position: [4, -5, 1.5] as const, aim: [4, 0, 1.5] as const },
        ].map((w) => ({ ...w, position: [...w.position], aim: [...w.aim] }) as (typeof pass.waypoints)[number]),
      })),
    }));
    const path = { ...setup, schemes: [{ ...scheme, frames: walked }] };
    expect(terrainOf(path, hazard(0.4, -6.45, 1.01))).toHaveLength(1);
    expect(terrainOf(path, hazard(0.4, -6.45, 0.99))).toEqual([]);
  });
});

/** Two places 8 m apart in a pen, parted by a wall with a gate 4 m wide; one goes from one to the other. */
const pen = onePassSetup({
  camera: { position: [0, -30, 1.5], aim: [0, 0, 1.5] },
  pass: { ...still([-4, 0.45, 1], [-4, 5, 1]), on: 0, off: 1 },
  passes: [{ id: 'other', name: 'Other', lampId: 'torch', ...still([4, 0.45, 1], [4, 5, 1]), on: 9, off: 10 }],
  subjects: [
    boxAt('north', [0, 10, 0], [24, 1, 3]),
    boxAt('south', [0, -10, 0], [24, 1, 3]),
    boxAt('west', [-12, 0, 0], [1, 21, 3]),
    boxAt('east', [12, 0, 0], [1, 21, 3]),
    boxAt('left-leaf', [0, 6, 0], [1, 8, 3]),
    boxAt('right-leaf', [0, -6, 0], [1, 8, 3]),
  ],
});

describe('terrain, where one walks', () => {
  it('goes round it as long as there is room: longer, without a caution', () => {
    const timingOf = (hazards: Hazard[]) => {
      const setup = { ...pen, hazards };
      return reportScheme(setup, setup.schemes[0] as Scheme).frames[0]?.passes[1]?.timing;
    };
    const metresOf = (hazards: Hazard[]) => (timingOf(hazards)?.walkSeconds ?? 0) * pen.walking.metresPerSecond;
    expect(terrainOf(pen, hazard(0, 0, 1.3))).toEqual([]);
    // straight on it is 8 m, a fifth more on foot; round a circle of 1.6 m that lies in the way at least by its tangents
    const [reach, radius] = [4, 1.6];
    const tangents = 2 * (Math.sqrt(reach ** 2 - radius ** 2) + radius * Math.asin(radius / reach));
    expect(metresOf([])).toBeCloseTo(9.6, 6);
    // the pass says what it goes round, and nothing of what lies beside the way
    expect(timingOf([hazard(0, 0, 1.3), { ...hazard(8, -8, 1), id: 'aside', name: 'Aside' }])?.roundHazards).toEqual([
      'Bog',
    ]);
    expect(timingOf([hazard(0, 0, 1.55)])?.roundHazards).toEqual([]);
    expect(metresOf([hazard(0, 0, 1.3)])).toBeGreaterThan(1.2 * tangents * 0.99);
    expect(metresOf([hazard(0, 0, 1.3)])).toBeLessThan(1.2 * tangents * 1.03);
  });

  it('a gate without room for a walker beside it: a danger that says so; gone at its limit, 0.6 m of room', () => {
    const [caution, ...more] = terrainOf(pen, hazard(0, 0, 1.55));
    expect(more).toEqual([]);
    expect(caution).toMatchObject({ severity: 'danger', passId: 'other', limit: 1.55 });
    expect(caution?.message).toMatch(/no way was found from “Pass” to “Other” but through “Bog”.*helper.*stand/);
    expect(terrainOf(pen, hazard(0, 0, 1.35))).toEqual([]);
  });

  it('the way from the camera to the first lamp, and back, is walked too', () => {
    const [scheme] = pen.schemes as [Scheme];
    // in the western half of the pen, with the lamp in the eastern
    const camera = { ...pen.camera, position: [-6, -5, 1.5] as const, aim: [0, 0, 1.5] as const };
    const frames = scheme.frames.map((frame) => ({ ...frame, passes: frame.passes.slice(1) }));
    const setup = { ...pen, camera, schemes: [{ ...scheme, frames }] } as unknown as Setup;
    const told = terrainOf(setup, hazard(0, 0, 1.55));
    expect(told.map(({ message }) => /No way was found (.*) but/.exec(message)?.[1])).toEqual([
      'from the camera to “Other”',
      'from “Other” to the camera',
    ]);
    // the round's, not the pass's
    for (const each of told) expect(each).toMatchObject({ severity: 'danger', frameId: 'frame' });
    for (const each of told) expect(each.passId).toBeUndefined();
    expect(terrainOf(setup, hazard(0, 0, 1.35))).toEqual([]);
  });
});

describe('terrain, where the camera stands', () => {
  // the camera at [3, -6] looks at [0, 0]: one stands 0.45 m farther off on that line, at [3.2012, -6.4025]
  const [sin, cos] = [3, 6].map((side) => side / Math.hypot(3, 6)) as [number, number];
  const feet = [3 + 0.45 * sin, -6 - 0.45 * cos] as const;

  it('a bog round it, which no pass comes near: a danger without a pass; gone at its limit', () => {
    const [caution, ...more] = terrainOf(wall('hand'), hazard(feet[0] + 1.5, feet[1], 1.501));
    expect(more).toEqual([]);
    expect(caution).toMatchObject({ code: 'terrain', severity: 'danger', frameId: 'frame', limit: 1.501 });
    expect(caution?.passId).toBeUndefined();
    expect(caution?.value).toBeCloseTo(1.5, 9);
    expect(caution?.message).toMatch(/stands behind it stands inside “Bog”, 0\.0 m past its edge.*by day/);
    expect(terrainOf(wall('hand'), hazard(feet[0] + 1.5, feet[1], 1.499))).toEqual([]);
  });

  it('is told of where all lamps stand, too', () => {
    expect(terrainOf(wall('stand'), hazard(3, -6, 1.5))).toMatchObject([{ severity: 'danger', limit: 1.5 }]);
  });

  it('a camera put up in it by somebody who stands beside it: a warning, once', () => {
    // before the camera, 0.3 m from it and 0.75 m from the feet
    const bog = (radius: number) => hazard(3 - 0.3 * sin, -6 + 0.3 * cos, radius);
    expect(terrainOf(wall('hand'), bog(0.31))).toMatchObject([{ severity: 'warning', frameId: 'frame' }]);
    expect(terrainOf(wall('hand'), bog(0.29))).toEqual([]);
    expect(terrainOf(wall('hand'), bog(0.76))).toMatchObject([{ severity: 'danger' }]);
  });
});
