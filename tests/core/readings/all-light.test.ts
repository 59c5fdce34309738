import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { allLightStops } from '../../../core/readings/all-light.ts';
import { targetReading, targetSurface } from '../../../core/readings/target-reading.ts';
import type { Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld, type WorldFrame } from '../../../core/world/world.ts';
import { onePassSetup, subjectOf } from '../support/scenes.ts';

/** A wall seen square on, in the dark, lit from two metres to the right of the camera. */
const wall = onePassSetup({
  camera: { position: [0, 0, 1.5], aim: [0, 6, 1.5] },
  pass: { waypoints: [{ position: [2, 0, 1.5], aim: [0, 6, 1.5] }] },
  subjects: [
    subjectOf('wall', [{ kind: 'box', widthMetres: 8, depthMetres: 0.4, heightMetres: 3, position: [0, 6.2, 0] }]),
  ],
});
const dark: Setup = { ...wall, place: { ...wall.place, skylight: { illuminanceLux: 0, temperatureKelvin: 6000 } } };
const scheme = dark.schemes[0] as Scheme;
const frame = scheme.frames[0] as Scheme['frames'][number];
const pass = frame.passes[0] as Pass;
/** The same light from the left, so many percent of it. */
const fromLeft = (levelPercent: number): Pass => ({
  ...pass,
  id: 'left',
  levelPercent,
  waypoints: pass.waypoints.map((w) => ({ ...w, position: [-2, 0, 1.5] as const })) as unknown as Pass['waypoints'],
});
const withPasses = (passes: Pass[]): Setup => ({ ...dark, schemes: [{ ...scheme, frames: [{ ...frame, passes }] }] });
const stopsOf = (setup: Setup): number | null => {
  const world = buildWorld(setup, setup.schemes[0] as Scheme);
  return allLightStops(world, world.frames[0] as WorldFrame, 'pass');
};

describe('allLightStops', () => {
  it('of one lamp in the dark is the level of that lamp at its target (abs 1e-9 stops)', () => {
    const world = buildWorld(dark, scheme);
    const worldFrame = world.frames[0] as WorldFrame;
    const surface = targetSurface(world.stage, world.view.position, [0, 1.5, -6]);
    const light = worldFrame.lights.find(({ id }) => id === 'pass');
    if (!surface || !light) throw new Error('nothing lit');
    const alone = targetReading(world.stage, surface, light, worldFrame).stops as number;
    expect(Math.abs((stopsOf(dark) as number) - alone)).toBeLessThan(1e-9);
  });

  it('is null for a pass of another frame', () => {
    const world = buildWorld(dark, scheme);
    expect(allLightStops(world, world.frames[0] as WorldFrame, 'another')).toBeNull();
  });

  it.each([
    [100, 1],
    [50, Math.log2(1.5)],
    [25, Math.log2(1.25)],
  ])('a fill of %d %% of the key from the mirrored place adds %d stops (abs 1e-3)', (percent, more) => {
    const added = (stopsOf(withPasses([pass, fromLeft(percent)])) as number) - (stopsOf(dark) as number);
    expect(Math.abs(added - more)).toBeLessThan(1e-3);
  });

  it('stands in the report of the frame; null without a pass', () => {
    const both = withPasses([pass, fromLeft(50)]);
    expect(reportScheme(both, both.schemes[0] as Scheme).frames[0]?.targetStops).toBeCloseTo(
      stopsOf(both) as number,
      9,
    );
    const none = withPasses([]);
    expect(reportScheme(none, none.schemes[0] as Scheme).frames[0]?.targetStops).toBeNull();
  });
});
